import {
	contradictory,
	impossible,
	outOfRange,
	type Rule,
	type RuleFault,
	said,
} from "../validation/rule.ts";
import { fromSi } from "../wire/units.ts";
import { coreTank, type Tank, tankBoilingPoint } from "./tank.ts";

type Tanked = { readonly tank: Tank };

const CLOSE = 0.01; // [-] how far a volume may be off its height and diameter

export const fillWithinVolume: Rule<Tanked> = ({ tank }) =>
	tank.fillL !== undefined && tank.fillL > tank.volumeL
		? [contradictory("/tank/fillL", `${said(tank.fillL)} L do not fit a tank of ${said(tank.volumeL)} L`)]
		: [];

/** Volume, height and diameter agree where all three are given; the third is a tank's where two are. */
export const tankDimensions: Rule<Tanked> = ({ tank }) => {
	const { volumeL, heightM, diameterM } = tank;
	if (heightM === undefined && diameterM === undefined) return [];
	if (heightM === undefined || diameterM === undefined) return shapeOf(tank);
	const holds = fromSi.litres((Math.PI / 4) * diameterM ** 2 * heightM);
	return Math.abs(holds - volumeL) > CLOSE * volumeL
		? [
				contradictory(
					"/tank/volumeL",
					`a tank ${said(heightM)} m high and ${said(diameterM)} m wide holds ${said(holds)} L, not ${said(volumeL)} L; leave one of the three out`,
				),
			]
		: [];
};

const SHAPES = { height: [0.1, 10], diameter: [0.1, 6] } as const; // [m] as a caller may give them

/** What follows from the volume and one dimension is no longer, wider or flatter than a tank may be. */
function shapeOf(tank: Tank): readonly RuleFault[] {
	const core = coreTank(tank, 0, (_, value) => value);
	const [given, follows] =
		tank.heightM === undefined ? (["diameterM", "height"] as const) : (["heightM", "diameter"] as const);
	const [least, most] = SHAPES[follows];
	return core[follows] >= least && core[follows] <= most
		? []
		: [
				outOfRange(
					`/tank/${given}`,
					`a tank of ${said(tank.volumeL)} L would have a ${follows} of ${said(core[follows])} m; it may be ${least} to ${most} m`,
				),
			];
}

export const reliefOfClosedTank: Rule<Tanked> = ({ tank }) =>
	tank.vented && tank.reliefPressureKpa !== undefined
		? [
				contradictory(
					"/tank/reliefPressureKpa",
					"a vented tank has no relief pressure; set vented to false or leave it out",
				),
			]
		: [];

export const nodesOfProfile: Rule<Tanked> = ({ tank: { nodes, startTemperatureC } }) =>
	nodes !== undefined && Array.isArray(startTemperatureC) && startTemperatureC.length !== nodes
		? [
				contradictory(
					"/tank/startTemperatureC",
					`${startTemperatureC.length} start temperatures do not make ${nodes} nodes`,
				),
			]
		: [];

/** Liquid water stands below its boiling point. */
export const startBelowBoiling: Rule<
	Tanked & {
		readonly site: { readonly elevationM: number };
		readonly draw: { readonly mainsTemperatureC: number };
	}
> = ({ tank, site, draw }) => {
	const water = coreTank(tank, draw.mainsTemperatureC, (_, value) => value);
	const boiling = tankBoilingPoint(water, site.elevationM);
	const hottest = Math.max(...water.startTemperatures);
	return hottest > boiling
		? [
				impossible(
					"/tank/startTemperatureC",
					`water at ${said(fromSi.celsius(hottest))} °C boils in this tank, which it does from ${said(fromSi.celsius(boiling))} °C`,
				),
			]
		: [];
};
