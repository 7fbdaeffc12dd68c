import { bracketedRoot } from "../numeric/root.ts";
import { secantFixedPoint } from "../numeric/secant-fixed-point.ts";
import { coilFlow, flowOfPower, oilTemperatureFor } from "./coil-in-oil.ts";
import type { Conditions } from "./conditions.ts";
import type { Duty } from "./duty.ts";
import { heatedStream } from "./heated-stream.ts";
import type { Heater } from "./heater.ts";
import type { OilVessel, VesselModel } from "./oil-vessel.ts";
import type { Steady } from "./steady.ts";

/** What the dish puts into the vessel's oil. */
export interface Collected {
	readonly power: number; // [W]; 0 where the receiver would only cool the oil, and its pump rests
	readonly film: number | undefined; // hottest, in the receiver [K]; undefined at rest and of an efficiency line
}

/** Heat that oil of a temperature takes up in the receiver, steady. */
export function collected(
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

/** Water through the coil of an oil vessel: the flow at the wanted temperature that the sun keeps up.
 *  The oil settles where collected = shell loss + heat to the water. Hotter oil passes more heat but collects less; where it
 *  would settle above its limit it is held there, and light is turned away.
 *  @returns  none where the vessel cannot be kept hotter than the water is wanted */
export function vesselFlow(heater: Heater, model: VesselModel, duty: Duty, conditions: Conditions): Steady {
	const { vessel } = model;
	const balanceAt = (oil: number) => {
		const { power, film } = collected(heater, model, oil, conditions);
		return { oil, film, net: power - model.loss(oil) };
	};
	const { net } = balanceAt(duty.wanted);
	if (!(net > 0)) return { kind: "none" };
	const converged = secantFixedPoint(
		(guess) => {
			const oil = guess > 0 ? oilTemperatureFor(vessel, guess, duty, vessel.limit) : undefined;
			if (oil === undefined) return undefined; // beyond the limit, or nothing left
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
