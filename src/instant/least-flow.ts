import { water } from "../fluids/water.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { secantFixedPoint } from "../numeric/secant-fixed-point.ts";
import { receiverFilmConductance } from "../receiver/film.ts";
import { type EfficiencyLineReceiver, hasTube, type TubeReceiver } from "../receiver/receiver.ts";
import { absorbedLight, type Conditions, gainAtWall } from "./conditions.ts";
import type { Duty } from "./duty.ts";
import type { Heater } from "./heater.ts";

const TOLERANCE = 1e-4; // [K] of the outlet
const FIRST_RISE = 0.01; // [K] lower end of the bracket: an impossibly large flow

const USUAL_SUPERHEAT = 10; // [K] of the wall above the water, initial guess

/** Flow at which the water begins to boil at the hottest wall of the tube, at its outlet [kg/s]: any smaller flow boils.
 *  There the wall is at the boiling point at line pressure and exceeds the water temperature by power/(h·A).
 *  An efficiency line has no wall temperature: its water boils when it leaves at the boiling point.
 *  @returns  0 where not even water at rest boils
 *  Assumes  evenly distributed light along the tube. Bubbles need a few kelvins more: a conservative assumption
 *  Error    that of the film in the receiver, ± 15 % (`nusseltHelical`) */
export function leastFlow(heater: Heater, duty: Duty, conditions: Conditions): number {
	const absorbed = absorbedLight(heater, conditions);
	if (!(absorbed > 0 && duty.cold < duty.boiling)) return 0;
	return hasTube(heater.receiver)
		? byTube(heater.receiver, heater.convection, absorbed, duty, conditions)
		: byLine(heater.receiver, absorbed, duty, conditions);
}

function byLine(
	receiver: EfficiencyLineReceiver,
	absorbed: number,
	{ cold, boiling }: Duty,
	{ ambient }: Conditions,
): number {
	const power = absorbed - receiver.lossCoefficient * (boiling - ambient);
	return Math.max(0, power) / (water.enthalpy(boiling) - water.enthalpy(cold)); // where the losses exceed the absorbed light it never boils
}

function byTube(
	receiver: TubeReceiver,
	convection: number,
	absorbed: number,
	{ cold, boiling }: Duty,
	conditions: Conditions,
): number {
	const feed = water.enthalpy(cold);
	const at = (outlet: number) => {
		const power = gainAtWall(receiver, convection, absorbed, conditions, boiling - (outlet - cold) / 2);
		const massFlow = Math.max(0, power) / (water.enthalpy(outlet) - feed);
		const mean = (cold + outlet) / 2;
		const conductance = receiverFilmConductance(receiver, water, mean, massFlow / water.density(mean));
		return {
			power,
			massFlow,
			missing: conductance * (boiling - outlet) - power,
			outlet: boiling - power / conductance,
		};
	};
	if (!(at(boiling).power > 0)) return 0;
	const first = Math.min(cold + FIRST_RISE, (cold + boiling) / 2);
	const converged = secantFixedPoint(
		(outlet) => (outlet > first && outlet < boiling ? { next: at(outlet).outlet } : undefined),
		Math.max(boiling - USUAL_SUPERHEAT, (first + boiling) / 2),
		TOLERANCE,
	);
	const outlet = converged?.next ?? bracketedRoot((guess) => at(guess).missing, first, boiling, TOLERANCE);
	return at(outlet).massFlow;
}
