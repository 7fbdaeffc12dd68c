import { coreTank, type Tank, tankBoilingPoint } from "../schemas/tank.ts";
import { fromSi } from "../units.ts";
import { contradictory, impossible, type Rule, said } from "./fault.ts";

type Tanked = { readonly tank: Tank };

const CLOSE = 0.01; // [-] how far a volume may be off its height and diameter

export const fillWithinVolume: Rule<Tanked> = ({ tank }) =>
	tank.fillL !== undefined && tank.fillL > tank.volumeL
		? [contradictory("/tank/fillL", `${said(tank.fillL)} L do not fit a tank of ${said(tank.volumeL)} L`)]
		: [];

/** Volume, height and diameter agree where all three are given. */
export const tankDimensions: Rule<Tanked> = ({ tank: { volumeL, heightM, diameterM } }) => {
	if (heightM === undefined || diameterM === undefined) return [];
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
