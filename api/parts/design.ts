import { z } from "@hono/zod-openapi";
import {
	coilFits,
	declination,
	dishOptics,
	hasCavity,
	hasTube,
	loopContent,
	type Plant,
	rimAngle,
	type Task,
} from "../../src/index.ts";
import {
	celsius,
	degrees,
	fromSi,
	litres,
	litresPerMinute,
	metres,
	millimetres,
	ratio,
	squareMetres,
} from "../wire/units.ts";

export const Design = z
	.strictObject({
		dish: z.strictObject({
			apertureM2: squareMetres("Area of the dish's aperture facing the sun on this day."),
			focalLengthM: metres(
				"Focal length of the dish, from the vertex to the focus; of an off-axis mirror, from its middle.",
			),
			rimAngleDeg: degrees(
				"Angle between the dish's axis and rim, seen from the focus. Absent for an off-axis mirror.",
			).optional(),
			interceptFactor: ratio(
				"Share of the reflected light that enters the receiver. Absent for an efficiency line.",
			).optional(),
			concentration: ratio(
				"Geometric concentration: area of the dish's aperture over that of the receiver's opening. Absent for an efficiency line.",
			).optional(),
		}),
		receiver: z
			.strictObject({
				apertureDiameterM: metres("Diameter of the receiver's opening or disc."),
				innerDiameterM: metres("Inner diameter of a cavity. Absent for other receivers.").optional(),
				depthM: metres("Inner depth of a cavity. Absent for other receivers.").optional(),
				tubeLengthM: metres("Length of the receiver's tube."),
				tubeInnerDiameterMm: millimetres("Inner diameter of the receiver's tube."),
				tubeOuterDiameterMm: millimetres("Outer diameter of the receiver's tube."),
			})
			.meta({ description: "Sizes of the receiver. Absent for an efficiency line." })
			.optional(),
		loop: z.strictObject({
			contentL: litres("Volume of fluid in pipes, coil and receiver."),
			expansionL: litres("Volume available for the loop's fluid to expand into."),
			flowLPerMin: litresPerMinute("Flow rate that the pump is set to."),
			highLimitC: celsius("Temperature at the top of the tank at which the dish turns away from the sun."),
			oilLimitC: celsius(
				"Temperature of the fluid leaving the receiver at which the dish turns away from the sun.",
			),
		}),
		coil: z.strictObject({
			lengthM: metres("Length of the coil's tube."),
			coilDiameterM: metres("Diameter of the coil's helix, between centres of the tube."),
			turns: ratio("Number of turns of the coil."),
			areaM2: squareMetres("Outer surface area of the coil, in contact with the water."),
		}),
		tank: z.strictObject({
			heightM: metres("Height of the tank."),
			diameterM: metres("Inner diameter of the tank."),
			fillL: litres("Volume of water in the tank."),
			startTemperaturesC: z
				.array(celsius("Temperature of a tank layer at the start."))
				.meta({ description: "Temperature of each tank layer at the start of the run, top layer first." }),
		}),
	})
	.openapi("Design", {
		description: "The complete plant: the sizes sent, and those designed for the omitted ones.",
	});

/** The plant as used, in wire units. */
export function wireDesign(plant: Plant, task: Task): z.input<typeof Design> {
	const { loop, coil, tank } = plant;
	const fit = coilFits(coil, tank);
	return {
		dish: wireDish(plant, task),
		...wireReceiver(plant),
		loop: {
			contentL: fromSi.litres(loopContent(plant)),
			expansionL: fromSi.litres(loop.expansionVolume),
			flowLPerMin: fromSi.litresPerMinute(loop.pump.flow),
			highLimitC: fromSi.celsius(loop.control.highLimit),
			oilLimitC: fromSi.celsius(loop.control.oilLimit),
		},
		coil: {
			lengthM: coil.length,
			coilDiameterM: coil.coilDiameter,
			turns: fit.outcome === "fits" ? fit.turns : 0,
			areaM2: Math.PI * coil.outerDiameter * coil.length,
		},
		tank: {
			heightM: tank.height,
			diameterM: tank.diameter,
			fillL: fromSi.litres(tank.fill),
			startTemperaturesC: Array.from(tank.startTemperatures, fromSi.celsius),
		},
	};
}

function wireDish({ dish, receiver, site }: Plant, task: Task): z.input<typeof Design>["dish"] {
	const opening = hasTube(receiver) ? receiver.apertureDiameter : undefined;
	const sun = declination((task.start + task.end) / 2);
	const optics = dishOptics(dish, opening ?? dish.focalLength, site.latitude, sun);
	return {
		apertureM2: optics.apertureArea,
		focalLengthM: dish.focalLength,
		...(dish.kind === "twoAxis" && {
			rimAngleDeg: fromSi.degrees(rimAngle(dish.diameter, dish.focalLength)),
		}),
		...(opening !== undefined && {
			interceptFactor: optics.interceptFactor,
			concentration: optics.geometricConcentration,
		}),
	};
}

function wireReceiver({ receiver }: Plant): Pick<z.input<typeof Design>, "receiver"> {
	if (!hasTube(receiver)) return {};
	return {
		receiver: {
			apertureDiameterM: receiver.apertureDiameter,
			...(hasCavity(receiver) && { innerDiameterM: receiver.innerDiameter, depthM: receiver.depth }),
			tubeLengthM: receiver.tube.length,
			tubeInnerDiameterMm: fromSi.millimetres(receiver.tube.innerDiameter),
			tubeOuterDiameterMm: fromSi.millimetres(receiver.tube.outerDiameter),
		},
	};
}
