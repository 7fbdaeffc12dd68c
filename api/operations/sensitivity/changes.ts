import {
	apertureArea,
	declination,
	hasPane,
	hasTube,
	type ImprovementId,
	type Plant,
	type Task,
} from "../../../src/index.ts";
import { fromSi } from "../../wire/units.ts";

/** One field of the request that an improvement changes. */
export interface Change {
	readonly pointer: string;
	readonly from?: number | string; // absent where the plant has no such part
	readonly to: number | string;
}

type Value = number | string | undefined;

/** A field's value in a plant; undefined where the plant has none. */
interface Field {
	readonly pointer: string;
	readonly of: (plant: Plant) => Value;
}

const pair = (path: string, of: (run: Plant["loop"]["supply"]) => number): readonly Field[] =>
	(["supply", "return"] as const).map((run) => ({
		pointer: `/loop/${run}/${path}`,
		of: ({ loop }) => of(loop[run]),
	}));

const receiver = (name: "apertureDiameter" | "emittance", pointer: string): Field => ({
	pointer,
	of: ({ receiver }) => (hasTube(receiver) ? receiver[name] : undefined),
});

const aperture = (sun: number): Field => ({
	pointer: "/dish/apertureM2",
	of: ({ dish, site }) =>
		apertureArea(dish, dish.kind === "twoAxis" ? site.latitude : 0, dish.kind === "twoAxis" ? sun : 0),
});

const thickness = (run: "supply" | "return"): Field => ({
	pointer: `/loop/${run}/insulation/thicknessMm`,
	of: ({ loop }) => fromSi.millimetres(loop[run].insulation.thickness),
});

function fieldsOf(id: ImprovementId, sun: number): readonly Field[] {
	switch (id) {
		case "aperture":
			return [aperture(sun), { pointer: "/dish/focalLengthM", of: ({ dish }) => dish.focalLength }];
		case "reflectance":
			return [{ pointer: "/dish/reflectance", of: ({ dish }) => dish.reflectance }];
		case "cleaning":
			return [{ pointer: "/dish/cleanliness", of: ({ dish }) => dish.cleanliness }];
		case "slopeError":
			return [{ pointer: "/dish/slopeErrorMrad", of: ({ dish }) => fromSi.milliradians(dish.slopeError) }];
		case "receiverAperture":
			return [
				receiver("apertureDiameter", "/receiver/apertureDiameterM"),
				{
					pointer: "/receiver/tube/lengthM",
					of: ({ receiver }) => (hasTube(receiver) ? receiver.tube.length : undefined),
				},
			];
		case "selectiveCoating":
			return [receiver("emittance", "/receiver/emittance")];
		case "glazing":
			return [
				{ pointer: "/receiver/kind", of: ({ receiver }) => receiver.kind },
				{
					pointer: "/receiver/coverTransmittance",
					of: ({ receiver }) => (hasPane(receiver) ? receiver.coverTransmittance : undefined),
				},
				{
					pointer: "/receiver/coverGapMm",
					of: ({ receiver }) => (hasPane(receiver) ? fromSi.millimetres(receiver.coverGap) : undefined),
				},
			];
		case "supplyLagging":
			return [thickness("supply")];
		case "returnLagging":
			return [thickness("return")];
		case "pumpLagging":
			return [{ pointer: "/loop/pump/casingLossWPerK", of: ({ loop }) => loop.pump.casingLossCoefficient }];
		case "tankLagging":
			return [
				{
					pointer: "/tank/insulation/thicknessMm",
					of: ({ tank }) => fromSi.millimetres(tank.insulation.thickness),
				},
			];
		case "dryLagging":
			return [
				...pair("insulation/moistFraction", ({ insulation }) => insulation.moisture),
				{
					pointer: "/receiver/insulation/moistFraction",
					of: ({ receiver }) => (hasTube(receiver) ? receiver.insulation.moisture : undefined),
				},
				{ pointer: "/tank/insulation/moistFraction", of: ({ tank }) => tank.insulation.moisture },
			];
		case "flow":
			return [
				{ pointer: "/loop/pump/flowLPerMin", of: ({ loop }) => fromSi.litresPerMinute(loop.pump.flow) },
			];
		case "coilLength":
			return [{ pointer: "/coil/lengthM", of: ({ coil }) => coil.length }];
		case "shorterPipes":
			return pair("lengthM", ({ length }) => length);
	}
}

/** The fields of the request in which two plants differ by an improvement. */
export function changesOf(id: ImprovementId, before: Plant, after: Plant, task: Task): readonly Change[] {
	return fieldsOf(id, declination((task.start + task.end) / 2)).flatMap(({ pointer, of }) => {
		const from = of(before);
		const to = of(after);
		if (to === undefined || from === to) return [];
		return [{ pointer, ...(from !== undefined && { from }), to }];
	});
}
