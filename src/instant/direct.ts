import { water } from "../fluids/water.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { receiverFilmConductance } from "../receiver/film.ts";
import { absorbedLight, type Conditions, gainAtWall, HOTTEST_WALL, isWall } from "./conditions.ts";
import { type Duty, enthalpyRise } from "./duty.ts";
import type { Heater } from "./heater.ts";
import { settled } from "./settled.ts";
import type { Steady } from "./steady.ts";

const TOLERANCE = 1e-4; // [K] of the wall's temperature: a tenth of a milliwatt of loss

/** Water straight through the focus: the flow that leaves the receiver at the wanted temperature, steady.
 *  massFlow·(h_wanted − h_cold) = light absorbed − losses of the wall; the wall's mean stands over the mean of cold and
 *  wanted by power/(h·A), h by that same flow.
 *  Assumes  the light spread evenly along the tube; nothing lost between receiver and tap. A metre of bare 15 mm pipe in a wind
 *           of 2 m/s loses 2 W for each kelvin over the air, more than a small dish's whole receiver: lag it, or count it
 *  Error    that of the receiver's losses: at 40 °C they are a few per cent of the light, so a third of them is one per cent
 *  Check    1 kW warms 1 L/min by 14.3 K   tests/reference/instant.reference.ts */
export function directFlow(heater: Heater, duty: Duty, conditions: Conditions): Steady {
	const { receiver } = heater;
	const absorbed = absorbedLight(heater, conditions);
	const rise = enthalpyRise(duty);
	if (receiver.kind === "efficiencyLine") {
		const power = absorbed - receiver.lossCoefficient * (duty.wanted - conditions.ambient);
		return power > 0 && absorbed > 0 ? flows(power, rise, undefined) : { kind: "none" };
	}
	const mean = (duty.cold + duty.wanted) / 2;
	if (!(absorbed > 0 && gainAtWall(receiver, heater.convection, absorbed, conditions, mean) > 0))
		return { kind: "none" };
	const density = water.density(mean);
	const at = (guess: number) => {
		const power = gainAtWall(receiver, heater.convection, absorbed, conditions, guess);
		const flow = Math.max(0, power) / (rise * density); // beyond the root the bracket's wall may lose more than it takes up
		const conductance = receiverFilmConductance(receiver, water, mean, flow);
		return { power, conductance, wall: mean + power / conductance };
	};
	const highest = () =>
		Math.min(
			HOTTEST_WALL,
			Math.max(mean, conditions.ambient) + absorbed / receiverFilmConductance(receiver, water, mean, 0),
		);
	const wall =
		settled((guess) => (isWall(guess) ? at(guess).wall : Number.NaN), mean, TOLERANCE) ??
		bracketedRoot((guess) => guess - at(guess).wall, mean, highest(), TOLERANCE);
	const { power, conductance } = at(wall);
	return flows(power, rise, duty.wanted + power / conductance);
}

function flows(power: number, rise: number, hottestWall: number | undefined): Steady {
	return { kind: "flows", massFlow: power / rise, power, hottestWall, oil: undefined };
}
