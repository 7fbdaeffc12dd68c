import { water } from "../fluids/water.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { secantFixedPoint } from "../numeric/secant-fixed-point.ts";
import { receiverFilmConductance } from "../receiver/film.ts";
import { hasTube, type TubeReceiver } from "../receiver/receiver.ts";
import { absorbedLight, type Conditions, gainAtWall, HOTTEST_WALL, isWallTemperature } from "./conditions.ts";
import type { Duty } from "./duty.ts";
import type { Heater } from "./heater.ts";

/** Steady flow of water through the receiver. */
export interface ReceiverFlow {
	readonly massFlow: number; // [kg/s]
	readonly power: number; // to the water [W]
	readonly leaving: number; // outlet temperature [K]
	readonly hottestWall: number | undefined; // on the water side [K]; unknown for an efficiency line
}

const TOLERANCE = 1e-4; // [K] of the wall's temperature: a tenth of a milliwatt of loss
const LINE_TOLERANCE = 1e-7; // [-] of the power

/** Steady flow of water that leaves the receiver at the wanted temperature; undefined where there is none.
 *  massFlow·(h_wanted − h_cold) = light absorbed − losses of the wall; the mean wall temperature exceeds the mean of cold and
 *  wanted by power/(h·A), h by that same flow.
 *  Assumes  evenly distributed light along the tube
 *  Error    that of the receiver's losses */
export function receiverFlow(heater: Heater, duty: Duty, conditions: Conditions): ReceiverFlow | undefined {
	const asWanted = () => duty.wanted;
	const quick = convergedFlow(heater, duty, conditions, asWanted);
	const { receiver } = heater;
	if (quick || !hasTube(receiver)) return quick;
	const absorbed = absorbedLight(heater, conditions);
	const mean = (duty.cold + duty.wanted) / 2;
	if (!(absorbed > 0 && gainAtWall(receiver, heater.convection, absorbed, conditions, mean) > 0))
		return undefined;
	const stateAt = states(receiver, heater.convection, absorbed, duty, conditions, asWanted);
	const highest = Math.min(
		HOTTEST_WALL,
		Math.max(mean, conditions.ambient) + absorbed / receiverFilmConductance(receiver, water, mean, 0),
	);
	const excess = (guess: number) => guess - stateAt(guess)!.wall; // the wanted temperature is always possible
	return stateAt(bracketedRoot(excess, mean, highest, TOLERANCE));
}

/** The same with an outlet temperature that depends on the power, where a fast iteration converges.
 *  @param leavingAt  as a function of the power to the water [W], which increases with the flow; NaN where there is none [K]
 *  @returns  undefined without flow, and where the iteration does not converge */
export function convergedFlow(
	heater: Heater,
	duty: Duty,
	conditions: Conditions,
	leavingAt: (power: number) => number,
): ReceiverFlow | undefined {
	const { receiver, convection } = heater;
	const absorbed = absorbedLight(heater, conditions);
	if (!(absorbed > 0)) return undefined;
	if (!hasTube(receiver)) {
		const line = (power: number) =>
			absorbed - receiver.lossCoefficient * (leavingAt(power) - conditions.ambient);
		const first = absorbed - receiver.lossCoefficient * (duty.wanted - conditions.ambient);
		const power =
			first > 0
				? secantFixedPoint((guess) => ({ next: line(guess) }), first, LINE_TOLERANCE * first)?.next
				: undefined;
		return power === undefined || !(power > 0)
			? undefined
			: { ...flowing(duty.cold, leavingAt(power), power), hottestWall: undefined };
	}
	const stateAt = states(receiver, convection, absorbed, duty, conditions, leavingAt);
	const found = secantFixedPoint(
		(guess) => {
			const state = isWallTemperature(guess) ? stateAt(guess) : undefined;
			return state && { next: state.wall, state };
		},
		(duty.cold + duty.wanted) / 2,
		TOLERANCE,
	);
	return found && found.state.power > 0 ? found.state : undefined;
}

/** Flow through the receiver for a guessed wall temperature, and the wall temperature that results from this flow. */
interface WallState extends ReceiverFlow {
	readonly wall: number; // mean [K]
}

/** State for a guess of the mean wall temperature; undefined where no outlet temperature is possible. */
function states(
	receiver: TubeReceiver,
	convection: number,
	absorbed: number,
	{ cold }: Duty,
	conditions: Conditions,
	leavingAt: (power: number) => number,
): (guess: number) => WallState | undefined {
	return (guess) => {
		const power = gainAtWall(receiver, convection, absorbed, conditions, guess);
		const leaving = leavingAt(power);
		if (!(leaving > cold)) return undefined;
		const mean = (cold + leaving) / 2;
		const flow = flowing(cold, leaving, power);
		const passed = Math.max(0, flow.massFlow) / water.density(mean); // beyond the root, the losses can exceed the absorbed light
		const over = power / receiverFilmConductance(receiver, water, mean, passed);
		return { ...flow, hottestWall: leaving + over, wall: mean + over };
	};
}

function flowing(cold: number, leaving: number, power: number): Omit<ReceiverFlow, "hottestWall"> {
	return { massFlow: power / (water.enthalpy(leaving) - water.enthalpy(cold)), power, leaving };
}
