import { bracketedRoot } from "../numeric/root.ts";
import { secantFixedPoint } from "../numeric/secant-fixed-point.ts";
import { coilFlow, flowOfPower, oilTemperatureFor } from "./coil-in-oil.ts";
import type { Conditions } from "./conditions.ts";
import type { Duty } from "./duty.ts";
import { heatedStream } from "./heated-stream.ts";
import type { Heater } from "./heater.ts";
import type { OilVessel, VesselModel } from "./oil-vessel.ts";
import type { Steady } from "./steady.ts";

/** Heat from the dish to the oil of a vessel. */
export interface Collected {
	readonly power: number; // [W]; 0 where the receiver would cool the oil and the pump is off
	readonly film: number | undefined; // highest, in the receiver [K]; undefined without flow and for an efficiency line
}

/** Steady heat gain of oil at a given temperature in the receiver. */
export function collectedHeat(
	heater: Heater,
	{ vessel }: VesselModel,
	oilTemperature: number,
	conditions: Conditions,
): Collected {
	const { fluid, circulation } = vessel;
	const massFlow = circulation * fluid.density(oilTemperature);
	const stream = heatedStream(heater, { fluid, inlet: oilTemperature, massFlow }, conditions);
	return stream.kind === "heated"
		? { power: stream.power, film: stream.hottestWall }
		: { power: 0, film: undefined };
}

const TOLERANCE = 1e-5; // [-] of the power
const OIL_TOLERANCE = 1e-3; // [K] of the oil: 1e-5 of the flow

/** Water through the coil of an oil vessel: the flow at the wanted temperature that the sun sustains.
 *  In steady state collected = shell loss + heat to the water. Hotter oil transfers more heat but collects less; where the
 *  steady temperature would exceed the limit, the oil stays at the limit and the dish turns away.
 *  @returns  none where the vessel cannot be kept hotter than the wanted temperature */
export function vesselFlow(heater: Heater, model: VesselModel, duty: Duty, conditions: Conditions): Steady {
	const { vessel } = model;
	const balanceAt = (oil: number) => {
		const { power, film } = collectedHeat(heater, model, oil, conditions);
		return { oil, film, net: power - model.loss(oil) };
	};
	const { net } = balanceAt(duty.wanted);
	if (!(net > 0)) return { kind: "none" };
	const converged = secantFixedPoint(
		(guess) => {
			const oil = guess > 0 ? oilTemperatureFor(vessel, guess, duty, vessel.limit) : undefined;
			if (oil === undefined) return undefined; // above the limit, or without power
			const balance = balanceAt(oil);
			return { next: balance.net, balance };
		},
		net,
		TOLERANCE * net,
	);
	if (converged) return flowing(vessel, duty, converged.balance, converged.next, false);
	const left = (oil: number) => balanceAt(oil).net - coilFlow(vessel, oil, duty).power;
	const atLimit = left(vessel.limit) >= 0;
	const oil = atLimit ? vessel.limit : bracketedRoot(left, duty.wanted, vessel.limit, OIL_TOLERANCE);
	return flowing(vessel, duty, balanceAt(oil), coilFlow(vessel, oil, duty).power, atLimit);
}

function flowing(
	vessel: OilVessel,
	duty: Duty,
	{ oil, film }: { readonly oil: number; readonly film: number | undefined },
	power: number,
	atLimit: boolean,
): Steady {
	const { massFlow, hottestWall } = flowOfPower(vessel, oil, power, duty);
	return {
		kind: "flows",
		massFlow,
		power,
		hottestWall,
		outlet: undefined,
		oil: { temperature: oil, film, atLimit },
	};
}
