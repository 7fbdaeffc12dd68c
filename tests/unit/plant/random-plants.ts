import { FLUID_IDS, fluidById } from "../../../src/fluids/catalogue.ts";
import { uniformStream } from "../../../src/numeric/random.ts";
import type { Plant, Task } from "../../../src/plant/plant.ts";
import type { Receiver } from "../../../src/receiver/receiver.ts";
import type { Draw } from "../../../src/tap/draw.ts";
import { cavity, glazedCoil, lagging, measuredDish, openCoil, pipe, plant, site, task } from "./plants.ts";

export interface RandomDay {
	readonly plant: Plant;
	readonly task: Task;
	readonly wind: number;
}

/** A plant and a day drawn at random from what somebody might build, good or bad; the same for the same seed. */
export function randomDay(seed: number): RandomDay {
	const uniform = uniformStream(seed);
	const between = (low: number, high: number) => low + (high - low) * uniform();
	const pick = <T>(choices: readonly T[]): T => choices[Math.floor(uniform() * choices.length)]!;

	const diameter = between(0.8, 4);
	const aperture = diameter * between(0.05, 0.15);
	const layers = pick([1, 2, 5, 10, 20]);
	const cold = between(274, 300);
	const fill = between(0.02, 0.6);
	const tankDiameter = Math.cbrt((4 * fill) / Math.PI / between(1, 3));
	const tankHeight = fill / ((Math.PI / 4) * tankDiameter ** 2);
	const mirror = {
		...plant.dish,
		reflectance: between(0.7, 0.95),
		cleanliness: between(0.8, 1),
		slopeError: between(0.001, 0.01),
		blockedFraction: between(0, 0.1),
	};
	return {
		wind: between(0, 8),
		task: {
			...task,
			step: pick([60, 120, 240]),
			target: { temperature: between(300, 375), at: pick(["mean", "top", "outlet"] as const) },
			draws: randomDraws(uniform),
			mains: between(274, 295),
		},
		plant: {
			site: { ...site, elevation: between(0, 4500) },
			dish:
				uniform() < 0.8
					? { ...mirror, kind: "twoAxis", diameter, focalLength: diameter * between(0.35, 0.9) }
					: { ...mirror, kind: "offsetPolar", mirrorArea: diameter ** 2, focalLength: diameter },
			receiver: resized(pick([cavity, openCoil, glazedCoil, measuredDish]), aperture),
			loop: {
				...plant.loop,
				fluid: fluidById(pick(FLUID_IDS)),
				supply: pipe(between(0.5, 20), pick([0, 0.013, 0.025, 0.05])),
				return: pipe(between(0.5, 20), pick([0, 0.013, 0.025, 0.05])),
				pump: { ...plant.loop.pump, flow: between(0.5, 8) / 60_000, electricPower: between(5, 100) },
				control: { ...plant.loop.control, highLimit: between(330, 400), oilLimit: between(380, 520) },
			},
			coil: {
				...plant.coil,
				length: between(1, 30),
				coilDiameter: 0.8 * tankDiameter,
				bottom: between(0, 0.4),
				top: between(0.5, 1),
				gapResistance: pick([0, 0.001]),
			},
			tank: {
				...plant.tank,
				fill,
				diameter: tankDiameter,
				height: tankHeight,
				insulation: lagging(between(0, 0.15)),
				inletHeight: pick([0, 1]),
				outletHeight: pick([1, 0]),
				startTemperatures: new Float64Array(layers).fill(cold),
				reliefPressure: pick([0, 0, 3e5]),
				surroundings: pick([{ kind: "outdoors" }, { kind: "indoors", temperature: 291 }] as const),
			},
		},
	};
}

function resized(receiver: Receiver, aperture: number): Receiver {
	if (receiver.kind === "efficiencyLine") return receiver;
	const scale = aperture / receiver.apertureDiameter;
	const tube = { ...receiver.tube, length: receiver.tube.length * scale ** 2 };
	return receiver.kind === "cavity"
		? {
				...receiver,
				apertureDiameter: aperture,
				innerDiameter: receiver.innerDiameter * scale,
				depth: receiver.depth * scale,
				tube,
			}
		: { ...receiver, apertureDiameter: aperture, tube };
}

function randomDraws(uniform: () => number): readonly Draw[] {
	return Array.from({ length: Math.floor(uniform() * 4) }, () => ({
		time: task.start + uniform() * (task.end - task.start),
		demand:
			uniform() < 0.5
				? { kind: "volume", volume: 0.06 * uniform() }
				: { kind: "energy", energy: 6e6 * uniform() },
		temperature: 310 + 15 * uniform(),
		flow: (4 + 8 * uniform()) / 60_000,
	}));
}
