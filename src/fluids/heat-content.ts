import { ICE_POINT } from "../constants.ts";
import { DomainError } from "../errors.ts";
import { polynomial } from "../numeric/polynomial.ts";
import type { Fluid } from "./fluid.ts";
import { boundedScaled, SCALE } from "./temperature-scale.ts";

const MOST_ITERATIONS = 20;
const CLOSE = 1e-10; // [K] last Newton step; the remaining error is of the order of its square

type HeatContent = Pick<Fluid, "heatCapacity" | "enthalpy" | "temperatureAtEnthalpy">;

/** Heat capacity, enthalpy and its inverse from one polynomial, which keeps them consistent.
 *  cp = Σ cᵢ xⁱ, h = 100 K · Σ cᵢ xⁱ⁺¹/(i+1), x = (T − 273.15 K)/100 K
 *  Beyond the range cp keeps its end value and h continues as a straight line.
 *  @param coefficients [N]  of cp against x, lowest power first [J/kgK]; cp must stay positive on the range
 *  @param range             low and high end of the fit [K]
 *  Inverse by Newton's method, within 1e-9 K; DomainError no_convergence for an enthalpy that is not a number */
export function heatContent(coefficients: readonly number[], range: Fluid["range"]): HeatContent {
	const [low, high] = range;
	const integral = [0, ...coefficients.map((c, i) => (SCALE * c) / (i + 1))];
	const heatCapacity = (temperature: number) =>
		polynomial(coefficients, boundedScaled(temperature, low, high));
	const withinRange = (temperature: number) => polynomial(integral, (temperature - ICE_POINT) / SCALE);
	const lowest = { enthalpy: withinRange(low), heatCapacity: heatCapacity(low) };
	const highest = { enthalpy: withinRange(high), heatCapacity: heatCapacity(high) };
	const meanCapacity = (highest.enthalpy - lowest.enthalpy) / (high - low);

	const enthalpy = (temperature: number) => {
		if (temperature < low) return lowest.enthalpy + lowest.heatCapacity * (temperature - low);
		if (temperature > high) return highest.enthalpy + highest.heatCapacity * (temperature - high);
		return withinRange(temperature);
	};

	const temperatureAtEnthalpy = (wanted: number) => {
		if (wanted < lowest.enthalpy) return low + (wanted - lowest.enthalpy) / lowest.heatCapacity;
		if (wanted > highest.enthalpy) return high + (wanted - highest.enthalpy) / highest.heatCapacity;
		let temperature = low + (wanted - lowest.enthalpy) / meanCapacity;
		for (let i = 0; i < MOST_ITERATIONS; i++) {
			const step = (wanted - enthalpy(temperature)) / heatCapacity(temperature);
			temperature += step;
			if (Math.abs(step) < CLOSE) return temperature;
		}
		throw new DomainError("no_convergence", "fluid.enthalpy", "no temperature found for this enthalpy", {
			wanted,
		});
	};

	return { heatCapacity, enthalpy, temperatureAtEnthalpy };
}
