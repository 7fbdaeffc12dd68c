import { apertureArea } from "../dish/optics.ts";
import type { DayOutcome, DaySeries } from "../plant/outcome.ts";
import { apertureOfMostHeat } from "../receiver/best-aperture.ts";
import { proportionedReceiver } from "../receiver/proportions.ts";
import { hasTube, type Receiver } from "../receiver/receiver.ts";
import { standardPressure } from "../sky/atmosphere.ts";
import { declination } from "../sun/position.ts";
import type { DayCase, DaySky } from "../uncertainty/day-case.ts";
import type { Changed } from "./changed.ts";
import type { Steps } from "./steps.ts";

const AS_GOOD = 0.03; // of the diameter: within it the heat changes by less than a thousandth

function withReceiver(of: DayCase, receiver: Receiver): DayCase {
	return { ...of, plant: { ...of.plant, receiver } };
}

export function withCoating(of: DayCase, emittance: number): Changed {
	const { receiver } = of.plant;
	if (!hasTube(receiver)) return "measuredWhole";
	return receiver.emittance > emittance ? withReceiver(of, { ...receiver, emittance }) : "alreadySo";
}

/** A pane in front of a bare spiral. */
export function withPane(of: DayCase, { transmittance, gap }: Steps["glazing"]): Changed {
	const { receiver } = of.plant;
	switch (receiver.kind) {
		case "openCoil":
			return withReceiver(of, {
				...receiver,
				kind: "glazedCoil",
				coverTransmittance: transmittance,
				coverGap: gap,
			});
		case "glazedCoil":
			return "alreadySo";
		case "cavity":
			return "notOnThisReceiver";
		case "efficiencyLine":
			return "measuredWhole";
		default:
			return receiver satisfies never;
	}
}

/** A step towards the aperture with the greatest net heat on this day: for a cavity the aperture alone, as with a ring in front of it or a hole
 *  cut wider; for a flat spiral with its tube. */
export function betterAperture(of: DayCase, step: number, outcome: DayOutcome): Changed {
	const { receiver, dish } = of.plant;
	if (!hasTube(receiver)) return "measuredWhole";
	if (!(outcome.balance.beam > 0)) return "noSun";
	const best = apertureOfMostHeat(dish, receiver, setting(of, outcome));
	const now = receiver.apertureDiameter;
	if (Math.abs(best / now - 1) <= AS_GOOD) return "alreadySo";
	const wanted = Math.min(Math.max(best, now * (1 - step)), now * (1 + step));
	switch (receiver.kind) {
		case "cavity": {
			const apertureDiameter = Math.min(wanted, receiver.innerDiameter);
			return apertureDiameter === now ? "noRoom" : withReceiver(of, { ...receiver, apertureDiameter });
		}
		case "openCoil":
		case "glazedCoil":
			return withReceiver(of, proportionedReceiver(receiver, wanted));
		default:
			return receiver satisfies never;
	}
}

/** Beam-weighted mean of the conditions for which an aperture is chosen. */
function setting({ plant: { dish, site }, sky, task }: DayCase, { series }: DayOutcome) {
	const beam = beamWeighted(series, series.beam);
	return {
		power: beam * apertureArea(dish, site.latitude, declination((task.start + task.end) / 2)),
		fluidTemperature: (beamWeighted(series, series.oilHot) + beamWeighted(series, series.oilCold)) / 2,
		ambient: beamWeighted(series, series.ambient),
		wind: meanWind(sky),
		pressure: standardPressure(site.elevation),
		altitude: Math.max(0, beamWeighted(series, series.sunAltitude)),
	};
}

function meanWind(sky: DaySky): number {
	switch (sky.kind) {
		case "clear":
			return sky.sky.wind;
		case "measured":
			return Float64Array.from(sky.sky.wind).reduce((sum, v) => sum + v, 0) / sky.sky.wind.length;
		default:
			return sky satisfies never;
	}
}

function beamWeighted({ beam }: DaySeries, column: readonly number[]): number {
	let sum = 0;
	let weight = 0;
	for (let row = 0; row < beam.length; row++) {
		sum += beam[row]! * column[row]!;
		weight += beam[row]!;
	}
	return weight > 0 ? sum / weight : column[0]!;
}
