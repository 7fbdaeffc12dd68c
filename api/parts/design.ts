import { z } from "@hono/zod-openapi";
import {
	coilFits,
	declination,
	dishOptics,
	hasHollow,
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
			apertureM2: squareMetres("Area facing the sun on this day."),
			focalLengthM: metres("From vertex to focus; of an off-axis mirror from its middle."),
			rimAngleDeg: degrees(
				"Between axis and rim, seen from the focus. Absent for an off-axis mirror.",
			).optional(),
			interceptFactor: ratio(
				"Share of the reflected light that enters the receiver. Absent for an efficiency line.",
			).optional(),
			concentration: ratio("Aperture over the receiver's opening. Absent for an efficiency line.").optional(),
		}),
		receiver: z
			.strictObject({
				apertureDiameterM: metres("Of its opening or disc."),
				innerDiameterM: metres("Of a cavity's hollow.").optional(),
				depthM: metres("Of a cavity's hollow.").optional(),
				tubeLengthM: metres("Along the tube."),
				tubeInnerDiameterMm: millimetres("Bore of the tube."),
				tubeOuterDiameterMm: millimetres("Outside of the tube."),
			})
			.meta({ description: "Absent for an efficiency line." })
			.optional(),
		loop: z.strictObject({
			contentL: litres("Fluid in pipes, coil and receiver."),
			expansionL: litres("Room for it to expand."),
			flowLPerMin: litresPerMinute("What the pump is set to."),
			highLimitC: celsius("Of the tank's top."),
			oilLimitC: celsius("Of the fluid leaving the receiver."),
		}),
		coil: z.strictObject({
			lengthM: metres("Along the tube."),
			coilDiameterM: metres("Of the helix, centre to centre."),
			turns: ratio("Of the helix."),
			areaM2: squareMetres("Outside, in the water."),
		}),
		tank: z.strictObject({
			heightM: metres("Of the vessel."),
			diameterM: metres("Inside."),
			fillL: litres("Water in it."),
			startTemperaturesC: z.array(celsius("Of a layer.")).meta({ description: "Of each layer, top first." }),
		}),
	})
	.openapi("Design", { description: "The plant as reckoned: what was given, and what was sized." });

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
			...(hasHollow(receiver) && { innerDiameterM: receiver.innerDiameter, depthM: receiver.depth }),
			tubeLengthM: receiver.tube.length,
			tubeInnerDiameterMm: fromSi.millimetres(receiver.tube.innerDiameter),
			tubeOuterDiameterMm: fromSi.millimetres(receiver.tube.outerDiameter),
		},
	};
}
