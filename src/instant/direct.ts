import type { Pipe } from "../loop/loop.ts";
import { boundedMaximum } from "../numeric/minimize.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { secantFixedPoint } from "../numeric/secant-fixed-point.ts";
import { absorbedLight, type Conditions } from "./conditions.ts";
import { type Duty, enthalpyRise } from "./duty.ts";
import type { Heater } from "./heater.ts";
import { leavingForFlow, leavingForPower, type PipeAir, pipeConductance } from "./outlet-pipe.ts";
import { convergedFlow, type ReceiverFlow, receiverFlow } from "./receiver-flow.ts";
import type { Steady } from "./steady.ts";

const TOLERANCE = 1e-3; // [-] of what the pipe loses
const ROOT_TOLERANCE = 1e-3; // [K] of the water leaving the receiver

/** Water straight through the focus and along a pipe to the tap: the flow that comes there at the wanted temperature, steady.
 *  It leaves the receiver hotter by what the pipe takes, and both are solved together:
 *  massFlow·(h_leaving − h_cold) = light absorbed − losses of the wall,  massFlow·(h_leaving − h_wanted) = loss of the pipe.
 *  Of two flows that do so it is the larger. Where the pipe takes more than any flow brings, none does: `lostInPipe`.
 *  @param outlet  from receiver to tap; length 0 where the water is drawn at the focus
 *  Assumes  as `receiverFlow`; the pipe in the receiver's air and wind
 *  Error    that of the receiver's losses (at 40 °C a few per cent of the light, so a third of them is one per cent), and a tenth
 *           of what the pipe loses
 *  Check    1 kW warms 1 L/min by 14.3 K   tests/reference/instant.reference.ts; the pipe by `pipeRun`   tests/unit/instant/outlet-pipe.test.ts */
export function directFlow(heater: Heater, outlet: Pipe, duty: Duty, conditions: Conditions): Steady {
	const rise = enthalpyRise(duty);
	if (outlet.length === 0) {
		const drawn = receiverFlow(heater, duty, conditions);
		return drawn ? arriving(drawn, rise) : { kind: "none" };
	}
	const first = pipeConductance(outlet, absorbedLight(heater, conditions) / rise, duty.wanted, conditions);
	const converged = secantFixedPoint(
		(guess) => {
			const leavingAt = (power: number) => {
				const leaving = leavingForPower(guess, power, duty, conditions.ambient) ?? Number.NaN;
				return leaving < duty.boiling ? leaving : Number.NaN; // no pipe brings steam
			};
			const flow = convergedFlow(heater, duty, conditions, leavingAt);
			return flow && { next: conductanceAt(outlet, flow, duty, conditions), flow };
		},
		first,
		TOLERANCE * first,
	);
	return converged ? arriving(converged.flow, rise) : searched(heater, outlet, duty, conditions);
}

/** The same where the quick way fails: no flow at all, or one at the edge where the pipe takes all but everything. */
function searched(heater: Heater, outlet: Pipe, duty: Duty, conditions: Conditions): Steady {
	const drawn = receiverFlow(heater, duty, conditions);
	if (drawn === undefined) return { kind: "none" };
	const { ambient } = conditions;
	const leastLost = pipeConductance(outlet, 0, duty.wanted, conditions);
	const coolest = leavingForPower(leastLost, drawn.power, duty, ambient); // at the least that the pipe loses, from the most that there is
	if (coolest === undefined || coolest >= duty.boiling) return { kind: "lostInPipe" };
	const flowAt = (leaving: number) => receiverFlow(heater, { ...duty, wanted: leaving }, conditions);
	const leaving = firstRoot(
		(guess) => {
			const flow = flowAt(guess);
			if (flow === undefined) return Number.MIN_SAFE_INTEGER;
			return (
				guess - leavingForFlow(conductanceAt(outlet, flow, duty, conditions), flow.massFlow, duty, ambient)
			);
		},
		duty,
		ambient,
	);
	const flow = leaving === undefined ? undefined : flowAt(leaving);
	return flow ? arriving(flow, enthalpyRise(duty)) : { kind: "lostInPipe" };
}

/** Where the water leaves hot enough for what the pipe takes: the excess over that rises to one summit and falls again. In air
 *  warmer than the water is wanted it rises all the way. */
function firstRoot(excess: (leaving: number) => number, duty: Duty, ambient: number): number | undefined {
	if (duty.wanted <= ambient)
		return bracketedRoot(excess, duty.cold + ROOT_TOLERANCE, duty.wanted, ROOT_TOLERANCE);
	const summit = boundedMaximum(excess, duty.wanted, duty.boiling, ROOT_TOLERANCE);
	return excess(summit) >= 0 ? bracketedRoot(excess, duty.wanted, summit, ROOT_TOLERANCE) : undefined;
}

function conductanceAt(
	outlet: Pipe,
	{ massFlow, leaving }: ReceiverFlow,
	{ wanted }: Duty,
	air: PipeAir,
): number {
	return pipeConductance(outlet, massFlow, (leaving + wanted) / 2, air);
}

/** The receiver's flow as it comes to the tap. */
function arriving({ massFlow, power, leaving, hottestWall }: ReceiverFlow, rise: number): Steady {
	const atTap = massFlow * rise;
	return {
		kind: "flows",
		massFlow,
		power: atTap,
		hottestWall,
		outlet: { leaving, loss: power - atTap },
		oil: undefined,
	};
}
