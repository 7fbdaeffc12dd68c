import { z } from "@hono/zod-openapi";
import {
	FLUID_IDS,
	type FluidId,
	fluidById,
	type OilVessel,
	practice,
	type SparseVessel,
	standard,
	unconfirmed,
	WALL_MATERIALS,
} from "../../../src/index.ts";
import { Coil, oneLength, sparseCoil, windingFaults } from "../../parts/coil.ts";
import { coreInsulation, insulation } from "../../parts/insulation.ts";
import { wall } from "../../parts/tube.ts";
import { contradictory, fourDigits, outOfRange, type Rule, type RuleFault } from "../../validation/rule.ts";
import { assume, part } from "../../wire/defaults.ts";
import {
	celsius,
	fromSi,
	litres,
	litresPerMinute,
	metres,
	millimetres,
	optionally,
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

/** The vessel as the core takes it, what the request leaves out still open. */
export function sparseVessel(vessel: OilVesselWire): SparseVessel {
	const metal = WALL_MATERIALS[vessel.wallMaterial];
	return {
		fluid: fluidById(vessel.fluid),
		fill: toSi.litres(vessel.volumeL),
		diameter: vessel.diameterM,
		wallThickness: toSi.millimetres(vessel.wallThicknessMm),
		wallConductivity: metal.conductivity,
		wallHeatCapacity: metal.heatCapacity,
		insulation: coreInsulation(vessel.insulation),
		fittingsFactor: vessel.fittingsFactor,
		coil: sparseCoil(vessel.coil),
		circulation: toSi.litresPerMinute(vessel.circulationLPerMin),
		charge: toSi.celsius(vessel.chargeTemperatureC),
		limit: optionally(toSi.celsius, vessel.oilLimitC),
	};
}

interface WithVessel {
	readonly vessel: OilVesselWire | undefined;
}

/** What could be designed of a request's vessel. */
interface Designs {
	readonly vessel: OilVessel | undefined;
}

/** The oil is known up to its limit, and start, charge and limit rise. */
export const vesselTemperatures: Rule<WithVessel, Designs> = ({ vessel }, designs) => {
	if (!vessel || !designs.vessel) return [];
	const limitC = fromSi.celsius(designs.vessel.limit);
	const knownC = fromSi.celsius(designs.vessel.fluid.range[1]);
	const faults: RuleFault[] = [];
	if (limitC > knownC)
		faults.push(
			outOfRange(
				"/vessel/oilLimitC",
				`${fourDigits(limitC)} °C is beyond what is known of this oil, which ends at ${fourDigits(knownC)} °C`,
			),
		);
	if (vessel.chargeTemperatureC >= limitC)
		faults.push(
			contradictory(
				"/vessel/chargeTemperatureC",
				`a charge at ${fourDigits(vessel.chargeTemperatureC)} °C is not below the oil's limit of ${fourDigits(limitC)} °C`,
			),
		);
	if (vessel.startTemperatureC >= vessel.chargeTemperatureC)
		faults.push(
			contradictory(
				"/vessel/startTemperatureC",
				`a start at ${fourDigits(vessel.startTemperatureC)} °C is not below the charge of ${fourDigits(vessel.chargeTemperatureC)} °C`,
			),
		);
	return faults;
};

/** Oil is hotter than the water that it heats. */
export const wantedBelowOilLimit: Rule<{ readonly wantedTemperatureC: number }, Designs> = (
	{ wantedTemperatureC },
	{ vessel },
) => {
	if (!vessel) return [];
	const limitC = fromSi.celsius(vessel.limit);
	return wantedTemperatureC < limitC
		? []
		: [
				contradictory(
					"/wantedTemperatureC",
					`oil held below ${fourDigits(limitC)} °C does not bring water to ${fourDigits(wantedTemperatureC)} °C`,
				),
			];
};

/** The coil has one length. */
export const vesselCoilLength: Rule<WithVessel> = ({ vessel }) =>
	vessel ? oneLength("/vessel/coil", vessel.coil) : [];

/** The coil's tube has a wall, and is wound into the vessel from a bottom to a top. */
export const coilInVessel: Rule<WithVessel, Designs> = ({ vessel }, designs) => {
	if (!vessel || !designs.vessel) return [];
	const { coil } = vessel;
	if (coil.outerDiameterMm <= coil.innerDiameterMm)
		return [contradictory("/vessel/coil/outerDiameterMm", "the coil's tube is no wider outside than inside")];
	if (coil.bottomHeight >= coil.topHeight)
		return [contradictory("/vessel/coil/topHeight", "the coil's top is not above its bottom")];
	return windingFaults("/vessel/coil", "vessel", coil, designs.vessel.coil, designs.vessel);
};
