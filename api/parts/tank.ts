import { z } from "@hono/zod-openapi";
import {
	boilingPoint,
	type Tank as CoreTank,
	derived,
	practice,
	standard,
	standardPressure,
	unconfirmed,
	WALL_MATERIALS,
} from "../../src/index.ts";
import { assume, type Fill, part } from "../wire/defaults.ts";
import { celsius, kilopascals, litres, metres, millimetres, ratio, toSi } from "../wire/units.ts";
import { coreInsulation, insulation } from "./insulation.ts";
import { wall } from "./tube.ts";

const MOST_NODES = 50;

const TankInsulation = insulation(
	"polyurethane",
	80,
	practice("foamed in place between tank and jacket"),
	500,
).openapi("TankInsulation", { description: "Lagging around the tank, ends included." });

export const Tank = z
	.strictObject({
		volumeL: litres("What the tank holds when full.", 5, 20_000),
		fillL: litres("Water in it. Left out, the tank is full.", 5, 20_000).optional(),
		heightM: metres("Of the vessel. Left out, it follows from diameter or proportion.", 0.1, 10).optional(),
		diameterM: metres("Inside. Left out, it follows from height or proportion.", 0.1, 6).optional(),
		wallMaterial: wall("What the tank is made of.", "stainlessSteel", practice("does not rust in hot water")),
		wallThicknessMm: assume(
			millimetres("Of its wall.", 0.3, 30),
			2,
			practice("sheet that is welded by hand"),
		),
		insulation: part(TankInsulation),
		fittingsFactor: assume(
			ratio("Multiplies the shell's heat loss for pipes, feet and sensors.", 1, 5),
			1.3,
			practice("connections and feet bridge the lagging"),
		),
		inletHeight: assume(
			ratio("Where cold water enters, as a share of the height.", 0, 1),
			0.05,
			practice("cold in at the bottom keeps layers apart"),
		),
		outletHeight: assume(
			ratio("Where hot water leaves, as a share of the height.", 0, 1),
			1,
			practice("hot out at the top, where it is hottest"),
		),
		nodes: z
			.int()
			.min(1)
			.max(MOST_NODES)
			.meta({
				description:
					"Layers in which the tank is reckoned. Left out: as many as the start profile has, else 10.",
				"x-unit": "1",
			})
			.optional(),
		startTemperatureC: z
			.union([
				celsius("One temperature throughout.", 0, 150),
				z
					.array(celsius("Of a layer.", 0, 150))
					.min(1)
					.max(MOST_NODES),
			])
			.meta({
				description:
					"At the start: one value, or one per layer from the top down. Left out, all is at the mains' temperature.",
				"x-unit": "°C",
			})
			.optional(),
		vented: assume(
			z.boolean().meta({ description: "Open to the air, or closed under pressure." }),
			true,
			practice("an open vent cannot burst"),
		),
		reliefPressureKpa: kilopascals(
			"Set pressure of the relief valve of a closed tank, above the air's. Left out: 600 kPa. Not for a vented tank.",
			50,
			1000,
		).optional(),
		surroundingsC: assume(
			z.union([celsius("Of the room it stands in.", -40, 60), z.literal("outdoors")]).meta({
				description: "Where it stands: the temperature of a room, or `outdoors` in the day's air and wind.",
				"x-unit": "°C",
			}),
			"outdoors",
			practice("the harder case"),
		),
	})
	.openapi("Tank", {
		description:
			"The store: an upright cylinder of water. Heights are shares of the filled height, 0 at the bottom.",
		example: { volumeL: 200, insulation: { material: "polyurethane", thicknessMm: 80 } },
	});

export type Tank = z.output<typeof Tank>;

const NODES = 10; // [-]
const PROPORTION = 2.2; // [-] height over diameter: slender enough to keep layers; common practice, no source
const RELIEF_KPA = 600; // [kPa] above the air's: the usual relief valve of a water heater, EN 1490 (value from memory)

/** @param mainsC  of the cold feed [°C] */
export function coreTank(tank: Tank, mainsC: number, fill: Fill): CoreTank {
	const volume = toSi.litres(tank.volumeL);
	const { height, diameter } = proportions(tank, volume, fill);
	const fillL = tank.fillL ?? fill("/tank/fillL", tank.volumeL, practice("a full tank"));
	const metal = WALL_MATERIALS[tank.wallMaterial];
	return {
		fill: toSi.litres(fillL),
		height,
		diameter,
		wallThickness: toSi.millimetres(tank.wallThicknessMm),
		wallConductivity: metal.conductivity,
		wallHeatCapacity: metal.heatCapacity,
		insulation: coreInsulation(tank.insulation),
		fittingsFactor: tank.fittingsFactor,
		inletHeight: tank.inletHeight,
		outletHeight: tank.outletHeight,
		startTemperatures: startTemperatures(tank, mainsC, fill),
		reliefPressure: reliefPressure(tank, fill),
		surroundings:
			tank.surroundingsC === "outdoors"
				? { kind: "outdoors" }
				: { kind: "indoors", temperature: toSi.celsius(tank.surroundingsC) },
	};
}

/** Boiling point of the tank's water at its pressure [K]. */
export function tankBoilingPoint(tank: CoreTank, elevation: number): number {
	return boilingPoint(standardPressure(elevation) + tank.reliefPressure);
}

function proportions(
	tank: Tank,
	volume: number,
	fill: Fill,
): { readonly height: number; readonly diameter: number } {
	const diameterAt = (height: number) => Math.sqrt((4 * volume) / (Math.PI * height));
	const heightAt = (diameter: number) => (4 * volume) / (Math.PI * diameter * diameter);
	const given = derived("follows from the volume");
	if (tank.heightM !== undefined)
		return {
			height: tank.heightM,
			diameter: tank.diameterM ?? fill("/tank/diameterM", diameterAt(tank.heightM), given),
		};
	const slender = practice(`follows from the volume at a height of ${PROPORTION} diameters`);
	const diameter =
		tank.diameterM ?? fill("/tank/diameterM", Math.cbrt((4 * volume) / (Math.PI * PROPORTION)), slender);
	return {
		height: fill("/tank/heightM", heightAt(diameter), tank.diameterM === undefined ? slender : given),
		diameter,
	};
}

function startTemperatures(tank: Tank, mainsC: number, fill: Fill): Float64Array {
	const start =
		tank.startTemperatureC ??
		fill("/tank/startTemperatureC", mainsC, derived("filled from the mains, at its temperature"));
	if (typeof start !== "number") return Float64Array.from(start, toSi.celsius);
	const nodes =
		tank.nodes ??
		fill(
			"/tank/nodes",
			NODES,
			derived("more change the litres at the tap by less than 2 %; fewer blur the layers"),
		);
	return new Float64Array(nodes).fill(toSi.celsius(start));
}

function reliefPressure(tank: Tank, fill: Fill): number {
	if (tank.vented) return 0;
	return toSi.kilopascals(
		tank.reliefPressureKpa ??
			fill(
				"/tank/reliefPressureKpa",
				RELIEF_KPA,
				unconfirmed(standard("the usual relief valve of a water heater", "EN 1490")),
			),
	);
}
