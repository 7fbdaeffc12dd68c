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

const VesselInsulation = insulation(
	"mineralWool",
	80,
	practice("withstands the temperature of the oil"),
	500,
).openapi("VesselInsulation", { description: "Insulation of the vessel, including its ends." });

export const OilVesselWire = z
	.strictObject({
		fluid: assume(
			z.enum(OILS).meta({ description: "Oil in the vessel." }),
			"mineralOilVg32",
			practice("widely available as hydraulic oil"),
		),
		volumeL: assume(
			litres("Volume of oil in the vessel, measured at 20 °C.", 1, 500),
			20,
			practice("charges within about an hour under a small dish"),
		),
		diameterM: metres(
			"Inner diameter of the vessel. If omitted, the vessel is 1.5 times as high as wide.",
			0.05,
			2,
		).optional(),
		wallMaterial: wall(
			"Material of the vessel.",
			"steel",
			practice("inexpensive, and protected from rust by the oil"),
		),
		wallThicknessMm: assume(
			millimetres("Thickness of the vessel's wall.", 0.3, 30),
			2,
			practice("sheet that can be welded by hand"),
		),
		insulation: part(VesselInsulation),
		fittingsFactor: assume(
			ratio("Factor on the shell's heat loss that accounts for pipes, feet and sensors.", 1, 5),
			1.3,
			practice("connections and feet bridge the insulation"),
		),
		coil: part(Coil),
		circulationLPerMin: assume(
			litresPerMinute("Flow of oil between vessel and receiver while the sun shines.", 0.2, 100),
			4,
			practice("keeps the oil's temperature rise in the receiver of a small dish below 20 K"),
		),
		chargeTemperatureC: assume(
			celsius("Oil temperature at which the vessel counts as charged.", 40, 300),
			150,
			unconfirmed(
				standard("the lower end of the range in which open-vented mineral oil is durable", "DIN 4754"),
			),
		),
		oilLimitC: celsius(
			"Oil temperature at which the dish turns away from the sun. If omitted, 20 K below the oil's bulk limit.",
			50,
			320,
		).optional(),
		startTemperatureC: assume(
			celsius("Temperature of oil and vessel at the start.", 0, 300),
			20,
			practice("cooled down overnight"),
		),
	})
	.openapi("OilVessel", {
		description:
			"A small insulated vessel of oil, heated by the dish; the water runs through a coil in it. The oil is assumed to be fully mixed.",
		example: { volumeL: 20, chargeTemperatureC: 150 },
	});

export type OilVesselWire = z.output<typeof OilVesselWire>;

/** The vessel in the core's terms; omitted fields stay undefined. */
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

/** The design of a request's vessel, where there is one. */
interface Designs {
	readonly vessel: OilVessel | undefined;
}

/** The limit is within the oil's data, and start < charge < limit. */
export const vesselTemperatures: Rule<WithVessel, Designs> = ({ vessel }, designs) => {
	if (!vessel || !designs.vessel) return [];
	const limitC = fromSi.celsius(designs.vessel.limit);
	const knownC = fromSi.celsius(designs.vessel.fluid.range[1]);
	const faults: RuleFault[] = [];
	if (limitC > knownC)
		faults.push(
			outOfRange(
				"/vessel/oilLimitC",
				`the oil limit of ${fourDigits(limitC)} °C is above ${fourDigits(knownC)} °C, where the data of this oil end; send a lower limit`,
			),
		);
	if (vessel.chargeTemperatureC >= limitC)
		faults.push(
			contradictory(
				"/vessel/chargeTemperatureC",
				`the charge temperature of ${fourDigits(vessel.chargeTemperatureC)} °C is not below the oil's limit of ${fourDigits(limitC)} °C; send a lower one`,
			),
		);
	if (vessel.startTemperatureC >= vessel.chargeTemperatureC)
		faults.push(
			contradictory(
				"/vessel/startTemperatureC",
				`the start temperature of ${fourDigits(vessel.startTemperatureC)} °C is not below the charge temperature of ${fourDigits(vessel.chargeTemperatureC)} °C; send a lower one`,
			),
		);
	return faults;
};

/** The oil is hotter than the water it heats. */
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
					`oil limited to ${fourDigits(limitC)} °C cannot heat water to ${fourDigits(wantedTemperatureC)} °C; send a lower wantedTemperatureC`,
				),
			];
};

/** The coil's length is stated once. */
export const vesselCoilLength: Rule<WithVessel> = ({ vessel }) =>
	vessel ? oneLength("/vessel/coil", vessel.coil) : [];

/** The coil's tube has a wall, and its windings fit the vessel. */
export const coilInVessel: Rule<WithVessel, Designs> = ({ vessel }, designs) => {
	if (!vessel || !designs.vessel) return [];
	const { coil } = vessel;
	if (coil.outerDiameterMm <= coil.innerDiameterMm)
		return [
			contradictory(
				"/vessel/coil/outerDiameterMm",
				"the coil's outer diameter is not larger than its inner diameter; send a larger outerDiameterMm",
			),
		];
	if (coil.bottomHeight >= coil.topHeight)
		return [
			contradictory(
				"/vessel/coil/topHeight",
				"the coil's top is not above its bottom; send a topHeight above bottomHeight",
			),
		];
	return windingFaults("/vessel/coil", "vessel", coil, designs.vessel.coil, designs.vessel);
};
