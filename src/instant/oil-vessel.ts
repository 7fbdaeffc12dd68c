import type { Coil } from "../coil/coil.ts";
import type { Fluid } from "../fluids/fluid.ts";
import type { Insulation } from "../heat/insulation.ts";
import { shellGeometry } from "../tank/geometry.ts";
import { shellLossCoefficient } from "../tank/shell.ts";
import type { Tank } from "../tank/tank.ts";

/** A small insulated vessel of oil, well mixed, heated by the dish and cooled by the water in its coil. */
export interface OilVessel {
	readonly fluid: Fluid;
	readonly fill: number; // of oil, cold [m³]
	readonly height: number; // [m]
	readonly diameter: number; // [m]
	readonly wallThickness: number; // [m]
	readonly wallConductivity: number; // [W/mK]
	readonly wallHeatCapacity: number; // volumetric [J/m³K]
	readonly insulation: Insulation;
	readonly fittingsFactor: number; // multiplies the shell's loss, ≥ 1
	readonly coil: Coil; // in which the water flows
	readonly circulation: number; // of oil between vessel and receiver [m³/s]
	readonly charge: number; // oil temperature at which it is charged [K]
	readonly limit: number; // of the bulk oil; the dish turns away [K]
}

/** Constants of a vessel for one air temperature. */
export interface VesselModel {
	readonly vessel: OilVessel;
	readonly loss: (temperature: number) => number; // to the air [W]
	readonly heatCapacity: (temperature: number) => number; // of oil, shell and coil [J/K]
}

const FIRST_SURFACE = 0.08; // [-] of the excess of the oil above the air, initial guess: 8 cm of insulation
const PASSES = 3; // each reduces the error to a tenth
const COLD_FILL = 293.15; // [K] 20 °C, at which the vessel is filled

/** Heat loss and heat capacity of a vessel as functions of its temperature.
 *  @param ambient [K]     @param wind [m/s]     @param pressure  of the air [Pa]
 *  The loss coefficient is computed at two temperatures, a third of the way up and at the limit, and is linear
 *  between them: within 1 % of the converged loss (tests/unit/instant/vessel.test.ts) */
export function vesselModel(vessel: OilVessel, ambient: number, wind: number, pressure: number): VesselModel {
	const shell = shellOf(vessel);
	const hot = vessel.limit;
	const warm = ambient + (hot - ambient) / 3;
	const coefficientAt = (temperature: number) => {
		let surface = ambient + FIRST_SURFACE * (temperature - ambient);
		let coefficient = 0;
		for (let pass = 0; pass < PASSES; pass++) {
			const found = shellLossCoefficient(shell, temperature, ambient, wind, pressure, surface);
			surface = found.surfaceTemperature;
			coefficient = found.coefficient;
		}
		return coefficient;
	};
	const atWarm = coefficientAt(warm);
	const slope = (coefficientAt(hot) - atWarm) / (hot - warm);
	const { fluid, coil } = vessel;
	const mass = vessel.fill * fluid.density(COLD_FILL);
	const coilMetal = (Math.PI / 4) * (coil.outerDiameter ** 2 - coil.innerDiameter ** 2) * coil.length;
	const metal = shellGeometry(shell).wallVolume * vessel.wallHeatCapacity + coilMetal * coil.wallHeatCapacity;
	return {
		vessel,
		loss: (temperature) => (atWarm + slope * (temperature - warm)) * (temperature - ambient),
		heatCapacity: (temperature) => metal + mass * fluid.heatCapacity(temperature),
	};
}

/** The shell of the vessel as a tank, whose loss formulas apply to oil too. */
function shellOf(vessel: OilVessel): Tank {
	const { fill, height, diameter, wallThickness, wallConductivity, wallHeatCapacity } = vessel;
	const { insulation, fittingsFactor } = vessel;
	return {
		...{ fill, height, diameter, wallThickness, wallConductivity, wallHeatCapacity },
		...{ insulation, fittingsFactor },
		inletHeight: 0,
		outletHeight: 1,
		startTemperatures: new Float64Array(1),
		reliefPressure: 0,
		surroundings: { kind: "outdoors" },
	};
}
