import { z } from "@hono/zod-openapi";
import {
	type Tank as CoreTank,
	derived,
	FLUID_IDS,
	type FluidId,
	fluidById,
	type OilVessel,
	practice,
	standard,
	unconfirmed,
	WALL_MATERIALS,
} from "../../../src/index.ts";
import { Coil, coreCoil } from "../../parts/coil.ts";
import { coreInsulation, insulation } from "../../parts/insulation.ts";
import { wall } from "../../parts/tube.ts";
import { assume, type Fill, part } from "../../wire/defaults.ts";
import {
	celsius,
	fromSi,
	litres,
	litresPerMinute,
	metres,
	millimetres,
	ratio,
	toSi,
} from "../../wire/units.ts";

const OILS = FLUID_IDS.filter((id) => id.endsWith("Oil") || id.startsWith("mineralOil")) as [
	FluidId,
	...FluidId[],
];

const VesselInsulation = insulation("mineralWool", 80, practice("stands the heat of oil"), 500).openapi(
	"VesselInsulation",
	{ description: "Lagging around the vessel, ends included." },
);

export const OilVesselWire = z
	.strictObject({
		fluid: assume(
			z.enum(OILS).meta({ description: "The oil in it." }),
			"mineralOilVg32",
			practice("sold everywhere as hydraulic oil"),
		),
		volumeL: assume(
			litres("Oil in it, measured out at 20 °C.", 1, 500),
			20,
			practice("charges within an hour or so under a small dish"),
		),
		diameterM: metres("Inside. Left out: 1.5 times as high as wide.", 0.05, 2).optional(),
		wallMaterial: wall("What the vessel is made of.", "steel", practice("cheap, and oil keeps it from rust")),
		wallThicknessMm: assume(
			millimetres("Of its wall.", 0.3, 30),
			2,
			practice("sheet that is welded by hand"),
		),
		insulation: part(VesselInsulation),
		fittingsFactor: assume(
			ratio("Multiplies the shell's heat loss for pipes, feet and sensors.", 1, 5),
			1.3,
			practice("connections and feet bridge the lagging"),
		),
		coil: part(Coil),
		circulationLPerMin: assume(
			litresPerMinute("Oil between vessel and receiver, while the sun is on.", 0.2, 100),
			4,
			practice("keeps oil under 20 K of rise at the receiver of a small dish"),
		),
		chargeTemperatureC: assume(
			celsius("Of the oil when the vessel counts as charged.", 40, 300),
			150,
			unconfirmed(standard("the lower end of what an open-vented mineral oil lasts at", "DIN 4754")),
		),
		oilLimitC: celsius(
			"Temperature of the oil at which the dish turns away. Left out: 20 K below the oil's limit in bulk.",
			50,
			320,
		).optional(),
		startTemperatureC: assume(
			celsius("Of oil and vessel when the sun comes on.", 0, 300),
			20,
			practice("cooled down overnight"),
		),
	})
	.openapi("OilVessel", {
		description:
			"A small lagged vessel of oil between the dish and the water, which runs through a coil in it. The oil counts as mixed.",
		example: { volumeL: 20, chargeTemperatureC: 150 },
	});

export type OilVesselWire = z.output<typeof OilVesselWire>;

const SLENDERNESS = 1.5; // [-] height over diameter; common practice, no source
const UNDER_BULK = 20; // [K]

/** The vessel as the core wants it. */
export function coreVessel(vessel: OilVesselWire, fill: Fill): OilVessel {
	const fluid = fluidById(vessel.fluid);
	const body = bodyOf(vessel, fill);
	const oilLimitC =
		vessel.oilLimitC ??
		fill(
			"/vessel/oilLimitC",
			Math.round(fromSi.celsius(fluid.limits.bulk.temperature)) - UNDER_BULK,
			derived(`20 K below the limit of ${fluid.name} in bulk`),
		);
	return {
		fluid,
		...body,
		fittingsFactor: vessel.fittingsFactor,
		coil: coreCoil(vessel.coil, coilRoom(body), (pointer, value, why) =>
			fill(`/vessel${pointer}`, value, why),
		),
		circulation: toSi.litresPerMinute(vessel.circulationLPerMin),
		charge: toSi.celsius(vessel.chargeTemperatureC),
		limit: toSi.celsius(oilLimitC),
	};
}

type Body = Pick<
	OilVessel,
	"fill" | "height" | "diameter" | "wallThickness" | "wallConductivity" | "wallHeatCapacity" | "insulation"
>;

function bodyOf(vessel: OilVesselWire, fill: Fill): Body {
	const volume = toSi.litres(vessel.volumeL);
	const metal = WALL_MATERIALS[vessel.wallMaterial];
	const diameter =
		vessel.diameterM ??
		fill(
			"/vessel/diameterM",
			Math.cbrt((4 * volume) / (Math.PI * SLENDERNESS)),
			practice(`follows from the volume at a height of ${SLENDERNESS} diameters`),
		);
	return {
		fill: volume,
		diameter,
		height: (4 * volume) / (Math.PI * diameter * diameter),
		wallThickness: toSi.millimetres(vessel.wallThicknessMm),
		wallConductivity: metal.conductivity,
		wallHeatCapacity: metal.heatCapacity,
		insulation: coreInsulation(vessel.insulation),
	};
}

/** The vessel as the room that a coil is wound into, in the terms of a tank. */
export function coilRoom(body: Body): CoreTank {
	return {
		...body,
		fittingsFactor: 1,
		inletHeight: 0,
		outletHeight: 1,
		startTemperatures: new Float64Array(1),
		reliefPressure: 0,
		surroundings: { kind: "outdoors" },
	};
}
