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

const TOLERANCE = 1e-3; // [-] of the heat loss of the pipe
const ROOT_TOLERANCE = 1e-3; // [K] of the water leaving the receiver

/** Water that flows through the focus and along a pipe to the tap: the steady flow that arrives at the wanted temperature.
 *  It leaves the receiver hotter by the temperature drop of the pipe, and both are solved together:
 *  massFlow·(h_leaving − h_cold) = light absorbed − losses of the wall,  massFlow·(h_leaving − h_wanted) = loss of the pipe.
 *  Where two flows are solutions it is the larger one. Where the pipe loses more than any flow carries there is none: `lostInPipe`.
 *  @param outlet  from receiver to tap; length 0 for a tap at the focus
 *  Assumes  as `receiverFlow`; the same air and wind at pipe and receiver
 *  Error    that of the receiver losses (at 40 °C a few per cent of the light, so a third of them is one per cent), and a tenth
 *           of the loss of the pipe
 *  Check    1 kW heats 1 L/min by 14.3 K   tests/reference/instant.reference.ts; the pipe by `pipeRun`   tests/unit/instant/outlet-pipe.test.ts */
export function directFlow(heater: Heater, outlet: Pipe, duty: Duty, conditions: Conditions): Steady {
	const rise = enthalpyRise(duty);
	if (outlet.length === 0) {
		const drawn = receiverFlow(heater, duty, conditions);
		return drawn ? steadyAtTap(drawn, rise) : { kind: "none" };
	}
	const first = pipeConductance(outlet, absorbedLight(heater, conditions) / rise, duty.wanted, conditions);
	const converged = secantFixedPoint(
		(guess) => {
			const leavingAt = (power: number) => {
				const leaving = leavingForPower(guess, power, duty, conditions.ambient) ?? Number.NaN;
				return leaving < duty.boiling ? leaving : Number.NaN; // the pipe does not carry steam
			};
			const flow = convergedFlow(heater, duty, conditions, leavingAt);
			return flow && { next: conductanceAt(outlet, flow, duty, conditions), flow };
		},
		first,
		TOLERANCE * first,
	);
	return converged ? steadyAtTap(converged.flow, rise) : searchedFlow(heater, outlet, duty, conditions);
}

/** The same where the fast iteration fails: no flow, or one so small that the pipe loses nearly all of its heat. */
function searchedFlow(heater: Heater, outlet: Pipe, duty: Duty, conditions: Conditions): Steady {
	const drawn = receiverFlow(heater, duty, conditions);
	if (drawn === undefined) return { kind: "none" };
	const { ambient } = conditions;
	const leastLost = pipeConductance(outlet, 0, duty.wanted, conditions);
	const coolest = leavingForPower(leastLost, drawn.power, duty, ambient); // with the least loss of the pipe and the greatest power
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
	return flow ? steadyAtTap(flow, enthalpyRise(duty)) : { kind: "lostInPipe" };
}

/** Outlet temperature at which the water is hot enough for the loss of the pipe: its excess has a single maximum. In air
 *  warmer than the wanted temperature it increases throughout. */
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

/** Flow through the receiver as it arrives at the tap. */
function steadyAtTap({ massFlow, power, leaving, hottestWall }: ReceiverFlow, rise: number): Steady {
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
