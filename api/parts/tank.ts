import { z } from "@hono/zod-openapi";
import {
	type Tank as CoreTank,
	practice,
	type SparseTank,
	tankBoilingPoint,
	WALL_MATERIALS,
} from "../../src/index.ts";
import {
	contradictory,
	fourDigits,
	impossible,
	outOfRange,
	type Rule,
	type RuleFault,
} from "../validation/rule.ts";
import { assume, part } from "../wire/defaults.ts";
import {
	celsius,
	fromSi,
	kilopascals,
	litres,
	metres,
	millimetres,
	optionally,
	ratio,
	toSi,
} from "../wire/units.ts";
import { coreInsulation, insulation } from "./insulation.ts";
import { wall } from "./tube.ts";

const MOST_NODES = 50;

const TankInsulation = insulation(
	"polyurethane",
	80,
	practice("foamed in place between tank and jacket"),
	500,
).openapi("TankInsulation", { description: "Insulation around the tank, ends included." });

export const Tank = z
	.strictObject({
		volumeL: litres("Volume of the tank when full.", 5, 20_000),
		fillL: litres("Volume of water in the tank. If omitted, the tank is full.", 5, 20_000).optional(),
		heightM: metres(
			"Height of the tank. If omitted, it follows from the diameter or the usual proportions.",
			0.1,
			10,
		).optional(),
		diameterM: metres(
			"Inner diameter of the tank. If omitted, it follows from the height or the usual proportions.",
			0.1,
			6,
		).optional(),
		wallMaterial: wall(
			"Material of the tank's wall.",
			"stainlessSteel",
			practice("does not rust in hot water"),
		),
		wallThicknessMm: assume(
			millimetres("Thickness of the tank's wall.", 0.3, 30),
			2,
			practice("sheet metal that can be welded by hand"),
		),
		insulation: part(TankInsulation),
		fittingsFactor: assume(
			ratio("Factor on the heat loss of the tank's shell, for pipes, feet and sensors.", 1, 5),
			1.3,
			practice("connections and feet bridge the insulation"),
		),
		inletHeight: assume(
			ratio("Height at which cold water enters the tank, as a share of the filled height.", 0, 1),
			0.05,
			practice("cold water entering at the bottom keeps the layers apart"),
		),
		outletHeight: assume(
			ratio("Height at which hot water leaves the tank, as a share of the filled height.", 0, 1),
			1,
			practice("hot water leaves at the top, where it is hottest"),
		),
		nodes: z
			.int()
			.min(1)
			.max(MOST_NODES)
			.meta({
				description:
					"Number of layers in which the tank is computed. If omitted: as many as the start profile has, else 10.",
				"x-unit": "1",
			})
			.optional(),
		startTemperatureC: z
			.union([
				celsius("Start temperature of the whole tank.", 0, 150),
				z
					.array(celsius("Start temperature of a tank layer.", 0, 150))
					.min(1)
					.max(MOST_NODES),
			])
			.meta({
				description:
					"Temperature of the tank at the start of the run: one value, or one per layer from the top down. If omitted: the mains temperature.",
				"x-unit": "°C",
			})
			.optional(),
		vented: assume(
			z.boolean().meta({
				description: "Whether the tank is open to the air. If false, it is closed and under pressure.",
			}),
			true,
			practice("an open vent keeps pressure from building up"),
		),
		reliefPressureKpa: kilopascals(
			"Set pressure of the relief valve of a closed tank, above atmospheric pressure. If omitted: 600 kPa. Not for a vented tank.",
			50,
			1000,
		).optional(),
		surroundingsC: assume(
			z.union([celsius("Temperature of the room around the tank.", -40, 60), z.literal("outdoors")]).meta({
				description: "Temperature of the room around the tank, or `outdoors` for the day's air and wind.",
				"x-unit": "°C",
			}),
			"outdoors",
			practice("the case with the larger heat loss"),
		),
	})
	.openapi("Tank", {
		description:
			"The hot-water tank: an upright cylinder. Heights are shares of the filled height, 0 at the bottom.",
		example: { volumeL: 200, insulation: { material: "polyurethane", thicknessMm: 80 } },
	});

export type Tank = z.output<typeof Tank>;

/** The tank for the core, with omitted values left to the design. */
export function sparseTank(tank: Tank): SparseTank {
	const metal = WALL_MATERIALS[tank.wallMaterial];
	const start = tank.startTemperatureC;
	return {
		volume: toSi.litres(tank.volumeL),
		fill: optionally(toSi.litres, tank.fillL),
		height: tank.heightM,
		diameter: tank.diameterM,
		wallThickness: toSi.millimetres(tank.wallThicknessMm),
		wallConductivity: metal.conductivity,
		wallHeatCapacity: metal.heatCapacity,
		insulation: coreInsulation(tank.insulation),
		fittingsFactor: tank.fittingsFactor,
		inletHeight: tank.inletHeight,
		outletHeight: tank.outletHeight,
		startTemperature: Array.isArray(start) ? start.map(toSi.celsius) : optionally(toSi.celsius, start),
		layers: tank.nodes,
		vented: tank.vented,
		reliefPressure: optionally(toSi.kilopascals, tank.reliefPressureKpa),
		surroundings:
			tank.surroundingsC === "outdoors"
				? { kind: "outdoors" }
				: { kind: "indoors", temperature: toSi.celsius(tank.surroundingsC) },
	};
}

interface WithTank {
	readonly tank: Tank;
}

/** The tank designed from a request. */
interface Designs {
	readonly tank: CoreTank;
}

const CLOSE = 0.01; // [-] relative deviation allowed between the volume and height times diameter

export const fillWithinVolume: Rule<WithTank> = ({ tank }) =>
	tank.fillL !== undefined && tank.fillL > tank.volumeL
		? [
				contradictory(
					"/tank/fillL",
					`must be at most volumeL (${fourDigits(tank.volumeL)} L); ${fourDigits(tank.fillL)} L is not`,
				),
			]
		: [];

/** Volume, height and diameter agree if all three are stated; if only two are, the third is within bounds. */
export const tankDimensions: Rule<WithTank, Designs> = ({ tank }, designs) => {
	const { volumeL, heightM, diameterM } = tank;
	if (heightM === undefined && diameterM === undefined) return [];
	if (heightM === undefined || diameterM === undefined) return shapeFaults(tank, designs.tank);
	const holds = fromSi.litres((Math.PI / 4) * diameterM ** 2 * heightM);
	return Math.abs(holds - volumeL) > CLOSE * volumeL
		? [
				contradictory(
					"/tank/volumeL",
					`a tank ${fourDigits(heightM)} m high and ${fourDigits(diameterM)} m wide holds ${fourDigits(holds)} L, not ${fourDigits(volumeL)} L; omit tank.heightM or tank.diameterM, or send the volume they give`,
				),
			]
		: [];
};

const SHAPES = { height: [0.1, 10], diameter: [0.1, 6] } as const; // [m] as a request may state them

/** The dimension that follows from the volume and the other one is within the bounds of a tank. */
function shapeFaults(tank: Tank, designed: CoreTank): readonly RuleFault[] {
	const [sent, follows] =
		tank.heightM === undefined ? (["diameterM", "height"] as const) : (["heightM", "diameter"] as const);
	const [least, most] = SHAPES[follows];
	return designed[follows] >= least && designed[follows] <= most
		? []
		: [
				outOfRange(
					`/tank/${sent}`,
					`tank.${sent} gives a tank of ${fourDigits(tank.volumeL)} L a ${follows} of ${fourDigits(designed[follows])} m; send one that gives ${least} to ${most} m`,
				),
			];
}

export const reliefOfClosedTank: Rule<WithTank> = ({ tank }) =>
	tank.vented && tank.reliefPressureKpa !== undefined
		? [
				contradictory(
					"/tank/reliefPressureKpa",
					"tank.reliefPressureKpa does not apply to a vented tank; omit it, or set tank.vented to false",
				),
			]
		: [];

export const nodesOfProfile: Rule<WithTank> = ({ tank: { nodes, startTemperatureC } }) =>
	nodes !== undefined && Array.isArray(startTemperatureC) && startTemperatureC.length !== nodes
		? [
				contradictory(
					"/tank/startTemperatureC",
					`must have one temperature per node (${nodes}); it has ${startTemperatureC.length}`,
				),
			]
		: [];

/** Liquid water is below its boiling point.
 *  @param elevation  of the site [m] */
export function startBelowBoiling({ tank }: Designs, elevation: number): readonly RuleFault[] {
	const boiling = tankBoilingPoint(tank, elevation);
	const hottest = Math.max(...tank.startTemperatures);
	return hottest > boiling
		? [
				impossible(
					"/tank/startTemperatureC",
					`must be at most the boiling point of water in this tank (${fourDigits(fromSi.celsius(boiling))} °C); ${fourDigits(fromSi.celsius(hottest))} °C is not`,
				),
			]
		: [];
}

/** Whether a tank's sizes agree, so that a coil can be designed for it. */
export const tankHolds = (request: WithTank, designs: Designs): boolean =>
	[fillWithinVolume, tankDimensions].every((rule) => rule(request, designs).length === 0);
