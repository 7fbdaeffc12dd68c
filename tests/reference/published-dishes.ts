import { coreInstantSpreads, InstantSpreads } from "../../api/operations/instant-heater/spread.ts";
import type { TwoAxisDish } from "../../src/dish/dish.ts";
import { apertureArea } from "../../src/dish/optics.ts";
import { focalLengthAtRimAngle } from "../../src/dish/paraboloid.ts";
import { powerOf } from "../../src/instant/steady.ts";
import { steadyFlow } from "../../src/instant/task.ts";
import type { Pipe } from "../../src/loop/loop.ts";
import { latinHypercube } from "../../src/numeric/latin-hypercube.ts";
import { proportionedReceiver } from "../../src/receiver/proportions.ts";
import type { TubeReceiver } from "../../src/receiver/receiver.ts";
import { caseHeater, type InstantCase } from "../../src/uncertainty/instant-case.ts";
import { instantInputs } from "../../src/uncertainty/instant-inputs.ts";

type Span = readonly [low: number, high: number];

/** A dish that was built and measured, as far as its paper tells. What it leaves open is drawn evenly over its span. */
export interface PublishedDish {
	readonly name: string;
	readonly efficiency: Span; // as published, of the beam on the aperture
	readonly reflectance: Span; // of what the material table has under the mirror's name
	readonly receivers: readonly TubeReceiver["kind"][]; // that it may have had, alike likely
	readonly cold: number; // over the air [K]
	readonly wanted: Span; // over the air [K]
	readonly source: string;
}

// Spans of what a paper leaves open, set down before the model was run on them and not touched since.
const BEAM: Span = [600, 950]; // [W/m²] of a clear day; common practice, no source
const BLOCKED: Span = [0.03, 0.12]; // arms and receiver alone, to gaps between strips or tiles as well; common practice, no source
const RIM_ANGLE: Span = [30, 60]; // [°] of satellite dishes and cookers; common practice, no source
const CONCENTRATION: Span = [54.9, 123.5]; // of two small dishes: Babalola, ICCEM 2012, 298–314; J. Renewable Energy 2021, 8944722
const BARE_PIPE: Span = [0, 3]; // [m] from the focus to where the water is measured; common practice, no source

// Materials: solar reflectance into the spot, new and clean.
/** Laminated film on steel 0.77, specular (Brogren et al., Sol. Energy Mater. Sol. Cells 82 (2004) 387–412); bright anodized panel
 *  0.914 (a laboratory's report on one sample: the best). */
export const ALUMINIUM: Span = [0.77, 0.914];
/** Common float of 4 mm 0.83, thin silvered glass 0.96; water-white plate 0.88 in Duffie & Beckman, table 4.13.1 (from memory). */
export const GLASS: Span = [0.83, 0.96];

const AIR = 298.15; // [K]
const SEED = 4;
const ROWS = 500;
const TAIL = 0.05;
const OPEN_INPUTS = 8;
const spreads = coreInstantSpreads(InstantSpreads.parse({}));

const insulation = { material: "mineralWool", thickness: 0.05, moisture: 0, surfaceEmittance: 0.9 };
const painted = {
	apertureDiameter: 1,
	absorptance: 0.94, // black paint, 0.92–0.97: Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4 (from memory)
	emittance: 0.9,
	tube: { innerDiameter: 0.01, outerDiameter: 0.012, length: 1 },
	insulation,
};
const RECEIVERS: Readonly<Record<TubeReceiver["kind"], TubeReceiver>> = {
	openCoil: { kind: "openCoil", ...painted },
	glazedCoil: { kind: "glazedCoil", ...painted, coverTransmittance: 0.9, coverGap: 0.025 },
	cavity: { kind: "cavity", ...painted, innerDiameter: 1, depth: 1 },
};

/** Ends and middle of what the model says of a dish: 5, 50 and 95 in a hundred. */
export interface Told {
	readonly low: number;
	readonly middle: number;
	readonly high: number;
}

/** What stands for the model: efficiency of one fully stated case. A wrong one can take its place. */
export type Model = (of: InstantCase) => number;

/** Efficiency of the beam on the aperture, from the cold end to where the water is measured. */
export const honest: Model = (of) => {
	const { arrangement, duty, conditions } = of;
	const power = powerOf(steadyFlow(arrangement, caseHeater(of), duty, conditions));
	return power / (conditions.beam * apertureArea(of.dish, 0, 0));
};

/** Copper tube of 15 mm without lagging. */
export const barePipe = (length: number): Pipe => ({
	length,
	innerDiameter: 0.013,
	outerDiameter: 0.015,
	wallConductivity: 390,
	wallHeatCapacity: 3.44e6,
	roughness: 1.5e-6,
	insulation: { material: "mineralWool", thickness: 0, moisture: 0, surfaceEmittance: 0.9 },
});

/** A published dish by a model: its materials from the table, all it leaves open drawn over the spans, and the service's own
 *  spreads on top. Seeded. */
export function told(dish: PublishedDish, model: Model): Told {
	const stated = caseOf(dish, new Array<number>(OPEN_INPUTS).fill(0.5));
	const inputs = instantInputs(stated, spreads);
	const found = latinHypercube(SEED, ROWS, OPEN_INPUTS + inputs.length)
		.map((scores) => {
			const open = Array.from(scores.subarray(0, OPEN_INPUTS), shareBelow);
			const drawn = instantInputs(caseOf(dish, open), spreads).reduce(
				(made, input, i) => input.at(made, scores[OPEN_INPUTS + i]!),
				caseOf(dish, open),
			);
			return model(drawn);
		})
		.sort((a, b) => a - b);
	const at = (share: number) => found[Math.round(share * (ROWS - 1))]!;
	return { low: at(TAIL), middle: at(0.5), high: at(1 - TAIL) };
}

const within = ([low, high]: Span, share: number) => low + (high - low) * share;

/** Share of normal scores below one: logistic form, within 0.01 of the normal integral everywhere, which is even enough. */
const shareBelow = (score: number) => 1 / (1 + Math.exp(-1.702 * score));

type Eight = readonly [number, number, number, number, number, number, number, number];

/** @param open  where in its span each thing left open lies, 0–1 */
function caseOf(dish: PublishedDish, open: readonly number[]): InstantCase {
	const [mirror, blocked, rim, concentration, kind, beam, pipe, end] = open as Eight;
	const diameter = 1.5; // [m] of small dishes; efficiency hangs on it only by what the pipe takes
	const shape: TwoAxisDish = {
		kind: "twoAxis",
		diameter,
		focalLength: focalLengthAtRimAngle(diameter, (within(RIM_ANGLE, rim) * Math.PI) / 180),
		reflectance: within(dish.reflectance, mirror),
		cleanliness: 0.92, // as these below the service's defaults
		blockedFraction: within(BLOCKED, blocked),
		slopeError: 0.005,
		specularity: 0.003,
		trackingError: 0.005,
		lowestAltitude: 0,
	};
	const kinds = dish.receivers;
	const receiver = RECEIVERS[kinds[Math.min(kinds.length - 1, Math.floor(kind * kinds.length))]!];
	const [least, most] = CONCENTRATION;
	const aperture = diameter / Math.sqrt(least * (most / least) ** concentration);
	return {
		dish: shape,
		receiver: proportionedReceiver(receiver, aperture),
		latitude: 0,
		declination: 0,
		convection: 1,
		arrangement: { kind: "direct", outlet: barePipe(within(BARE_PIPE, pipe)) },
		duty: { cold: AIR + dish.cold, wanted: AIR + within(dish.wanted, end), boiling: 500 },
		wantedFlow: undefined,
		largestAperture: 100,
		conditions: { beam: within(BEAM, beam), ambient: AIR, wind: 2, pressure: 101_325, altitude: 0.8 },
		beam: { kind: "stated" },
	};
}

const CHAHOUD =
	"Chahoud, GSTF J. Eng. Technology 2 (2013), parabolic dish collector for domestic purposes: abstract";
const ANY: readonly TubeReceiver["kind"][] = ["openCoil", "glazedCoil", "cavity"];
const AS_THE_AIR = { cold: -3, wanted: [3, 3] } as const; // 0.02 kg/s and square metre, the flow that collectors are tested at
const WARM = { cold: 37, wanted: [43, 43] } as const;

const LINES = [
	["aluminium strips", ALUMINIUM, 0.59, 0.445],
	["glass mirrors", GLASS, 0.71, 0.605],
] as const;

/** At the air's temperature: where the line starts. */
export const lineStarts: readonly PublishedDish[] = LINES.map(([name, reflectance, start]) => ({
	name: `${name}, at the air's temperature`,
	efficiency: [start, start],
	reflectance,
	receivers: ANY,
	...AS_THE_AIR,
	source: CHAHOUD,
}));

/** 40 K over the air, by the published line at 800 W/m². */
export const lineEnds: readonly PublishedDish[] = LINES.map(([name, reflectance, , end]) => ({
	name: `${name}, 40 K over the air`,
	efficiency: [end, end],
	reflectance,
	receivers: ANY,
	...WARM,
	source: CHAHOUD,
}));

/** Forty litres a day, heated from the air's temperature to as much as 100 °C by a bare cylinder in the focus; of the mirror the
 *  abstract says nothing. */
export const waterHeater: PublishedDish = {
	name: "dish tracked on two axes, 40 L a day to as much as 100 °C",
	efficiency: [0.52, 0.56],
	reflectance: [ALUMINIUM[0], GLASS[1]],
	receivers: ["openCoil"],
	cold: 0,
	wanted: [35, 75],
	source: "Ibrahim Ladan Mohammed, Int. J. Eng. Research and Applications 2(1) (2012) 822–830: abstract",
};

/** Good mirrors and a black receiver, water 40–60 K over the air. */
export const goodMirrors: PublishedDish = {
	name: "good mirrors, water 40 to 60 K over the air",
	efficiency: [0.45, 0.6],
	reflectance: [ALUMINIUM[0], GLASS[1]],
	receivers: ANY,
	cold: 0,
	wanted: [40, 60],
	source: "band of published small dishes (common practice, no source)",
};
