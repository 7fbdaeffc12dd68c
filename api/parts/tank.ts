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

/** The tank as the core takes it, what the request leaves out still open. */
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

/** What could be designed of a request's tank. */
interface Designs {
	readonly tank: CoreTank;
}

const CLOSE = 0.01; // [-] how far a volume may be off its height and diameter

export const fillWithinVolume: Rule<WithTank> = ({ tank }) =>
	tank.fillL !== undefined && tank.fillL > tank.volumeL
		? [
				contradictory(
					"/tank/fillL",
					`${fourDigits(tank.fillL)} L do not fit a tank of ${fourDigits(tank.volumeL)} L`,
				),
			]
		: [];

/** Volume, height and diameter agree where all three are stated; the third is a tank's where two are. */
export const tankDimensions: Rule<WithTank, Designs> = ({ tank }, designs) => {
	const { volumeL, heightM, diameterM } = tank;
	if (heightM === undefined && diameterM === undefined) return [];
	if (heightM === undefined || diameterM === undefined) return shapeFaults(tank, designs.tank);
	const holds = fromSi.litres((Math.PI / 4) * diameterM ** 2 * heightM);
	return Math.abs(holds - volumeL) > CLOSE * volumeL
		? [
				contradictory(
					"/tank/volumeL",
					`a tank ${fourDigits(heightM)} m high and ${fourDigits(diameterM)} m wide holds ${fourDigits(holds)} L, not ${fourDigits(volumeL)} L; leave one of the three out`,
				),
			]
		: [];
};

const SHAPES = { height: [0.1, 10], diameter: [0.1, 6] } as const; // [m] as a caller may give them

/** What follows from the volume and one dimension is no longer, wider or flatter than a tank may be. */
function shapeFaults(tank: Tank, designed: CoreTank): readonly RuleFault[] {
	const [sent, follows] =
		tank.heightM === undefined ? (["diameterM", "height"] as const) : (["heightM", "diameter"] as const);
	const [least, most] = SHAPES[follows];
	return designed[follows] >= least && designed[follows] <= most
		? []
		: [
				outOfRange(
					`/tank/${sent}`,
					`a tank of ${fourDigits(tank.volumeL)} L would have a ${follows} of ${fourDigits(designed[follows])} m; it may be ${least} to ${most} m`,
				),
			];
}

export const reliefOfClosedTank: Rule<WithTank> = ({ tank }) =>
	tank.vented && tank.reliefPressureKpa !== undefined
		? [
				contradictory(
					"/tank/reliefPressureKpa",
					"a vented tank has no relief pressure; set vented to false or leave it out",
				),
			]
		: [];

export const nodesOfProfile: Rule<WithTank> = ({ tank: { nodes, startTemperatureC } }) =>
	nodes !== undefined && Array.isArray(startTemperatureC) && startTemperatureC.length !== nodes
		? [
				contradictory(
					"/tank/startTemperatureC",
					`${startTemperatureC.length} start temperatures do not make ${nodes} nodes`,
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
					`water at ${fourDigits(fromSi.celsius(hottest))} °C boils in this tank, which it does from ${fourDigits(fromSi.celsius(boiling))} °C`,
				),
			]
		: [];
}

/** Whether a tank's sizes agree, so that a coil can be fitted into it. */
export const tankHolds = (request: WithTank, designs: Designs): boolean =>
	[fillWithinVolume, tankDimensions].every((rule) => rule(request, designs).length === 0);
