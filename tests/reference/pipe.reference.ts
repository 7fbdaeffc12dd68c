import { effectivenessUniform, logMeanDifference } from "../../src/heat/exchanger.ts";
import { insulationConductivity, insulationMaterial } from "../../src/heat/insulation.ts";
import { nusseltGnielinski, nusseltHausen, nusseltPipe } from "../../src/heat/internal-flow.ts";
import type { Pipe } from "../../src/loop/loop.ts";
import { criticalRadius, type PipeHeatLoss, pipeHeatLoss, shellResistance } from "../../src/loop/pipe.ts";
import type { ReferenceRow, ReferenceSet, Tolerance } from "./reference.ts";

const celsius = (t: number): number => t + 273.15;
const CENGEL = "Çengel, Heat Transfer: A Practical Approach, 2e, McGraw-Hill 2003, example 8-3";
const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6e, Wiley 2007";

const row = (
	name: string,
	published: number,
	tolerance: Tolerance,
	source: string,
	fromMemory: boolean,
	computed: () => number,
): ReferenceRow => ({ name, published, computed, tolerance, source, fromMemory });

const GNIELINSKI = "Gnielinski, Int. Chem. Eng. 16 (1976) 359–368; worked out apart from this project";
const HAUSEN = "Hausen, Z. VDI Beih. Verfahrenstechnik 4 (1943) 91–98; worked out apart from this project";
const inside: ReferenceSet = {
	quantity: "inside a straight tube, Nusselt number",
	unit: "-",
	rows: [
		...(
			[
				[1e4, 0.7, 29.82],
				[1e4, 7, 79.5],
				[5e4, 6, 308.5],
				[1e5, 4, 465],
				[3000, 7, 22.5],
			] as const
		).map(([Re, Pr, Nu]) =>
			row(
				`turbulent, Re ${Re}, Pr ${Pr}`,
				Nu,
				{ relative: 0.0023, reason: "three digits" },
				GNIELINSKI,
				false,
				() => nusseltGnielinski(Re, Pr),
			),
		),
		...(
			[
				[1, 3.72],
				[10, 4.22],
				[100, 7.25],
				[1000, 17.02],
			] as const
		).map(([Gz, Nu]) =>
			row(`laminar, Graetz ${Gz}`, Nu, { absolute: 0.006, reason: "two decimals" }, HAUSEN, false, () =>
				nusseltHausen(Gz),
			),
		),
		row(
			"air Re 1e4, Pr 0.7, against Dittus & Boelter",
			31.6,
			{ relative: 0.1, reason: "an older fit, ± 25 % of the data; Gnielinski ± 10 %" },
			`Dittus & Boelter 1930 in ${INCROPERA}, equation 8.60`,
			false,
			() => nusseltPipe(1e4, 0.7, 0.001),
		),
		row(
			"oil line through a lake, Re 666, Pr 10 400",
			37.3,
			{ relative: 0.03, reason: "the book has Edwards's constant 0.065 where Hausen has 0.0668" },
			CENGEL,
			true,
			() => nusseltPipe(666, 10_400, 0.3 / 200),
		),
	],
};

/** Çengel's oil line, with his properties. */
const lake = () => {
	const film = (nusseltPipe(666, 10_400, 0.3 / 200) * 0.145) / 0.3;
	const capacityRate = 888 * 2 * (Math.PI / 4) * 0.3 ** 2 * 1880;
	const drop = 20 * effectivenessUniform((film * Math.PI * 0.3 * 200) / capacityRate);
	return { outlet: 20 - drop, heat: capacityRate * drop };
};

/** Incropera's concentric oil cooler, with his properties: tube 25 mm, shell 45 mm, annulus Nu 5.63. */
const coolerLength = (): number => {
	const heat = 0.1 * 2131 * 40;
	const waterOut = 30 + heat / (0.2 * 4178);
	const Re = (4 * 0.2) / (Math.PI * 0.025 * 725e-6);
	const water = (nusseltPipe(Re, 4.85, 0.025 / 66) * 0.625) / 0.025;
	const oil = (5.63 * 0.138) / 0.02;
	const U = 1 / (1 / water + 1 / oil);
	return heat / (U * Math.PI * 0.025 * logMeanDifference(100 - waterOut, 60 - 30));
};

const examples: ReferenceSet = {
	quantity: "whole examples of oil in pipes",
	unit: "°C, W or m",
	rows: [
		row(
			"oil line through a lake, outlet °C",
			19.71,
			{ absolute: 0.015, reason: "constant of Edwards against Hausen" },
			CENGEL,
			true,
			() => lake().outlet,
		),
		row(
			"oil line through a lake, heat W",
			6.75e4,
			{ relative: 0.03, reason: "constant of Edwards against Hausen" },
			CENGEL,
			true,
			() => lake().heat,
		),
		row(
			"counterflow oil cooler, length m",
			65.9,
			{ relative: 0.005, reason: "water film by Gnielinski instead of Dittus & Boelter; the oil film rules" },
			`${INCROPERA}, example 11.1`,
			false,
			coolerLength,
		),
	],
};

/** Resistance of lagging in series with a constant film: steam pipe, radii 57 and 107 mm. */
const lagging = shellResistance(0.057, 0.107, 0.045);
const film = 1 / (2 * Math.PI * 0.107 * 10);
const conduction: ReferenceSet = {
	quantity: "conduction through lagging",
	unit: "W/m, mK/W, °C or mm",
	rows: [
		row(
			"radii 50 and 100 mm, k 0.05, 200 K, W/m",
			90.6472,
			{ relative: 1e-6, reason: "exact" },
			`${INCROPERA}, equation 3.27`,
			false,
			() => 200 / shellResistance(0.05, 0.1, 0.05),
		),
		row(
			"steam pipe, lagging mK/W",
			2.227,
			{ absolute: 0.0006, reason: "three decimals" },
			"Textbook example: steam 150 °C, air 20 °C, radii 57 and 107 mm, k 0.045, h 10 (quoted in a public copy)",
			false,
			() => lagging,
		),
		row(
			"steam pipe, loss W/m",
			54.71,
			{ absolute: 0.02, reason: "two decimals, resistance printed to three" },
			"Textbook example: steam 150 °C, air 20 °C, radii 57 and 107 mm, k 0.045, h 10 (quoted in a public copy)",
			false,
			() => 130 / (lagging + film),
		),
		row(
			"critical radius k 0.04, h 8, mm",
			5,
			{ absolute: 0.001, reason: "exact" },
			"Condition dq/dr = 0, maximum found numerically apart from this project",
			false,
			() => criticalRadius(0.04, 8) * 1000,
		),
		row(
			"critical radius k 0.13, h 10, mm",
			13,
			{ absolute: 0.001, reason: "exact" },
			"Condition dq/dr = 0, maximum found numerically apart from this project",
			false,
			() => criticalRadius(0.13, 10) * 1000,
		),
		row(
			"cable k 0.155, h 8.5, mm",
			18.2,
			{ absolute: 0.05, reason: "one decimal" },
			"Textbook example: cable, k 0.155, h 8.5, radius 5 mm (quoted in a public copy)",
			false,
			() => criticalRadius(0.155, 8.5) * 1000,
		),
	],
};

/** Copper pipe at 80 °C in 20 °C, skin emittance 0.9, lagged to k = 0.040 W/mK at 52 °C by the moisture that takes it there. */
const laid = (outerDiameter: number, thickness: number, wind: number): PipeHeatLoss => {
	const wool = insulationMaterial("mineralWool");
	const moisture = Math.log(0.04 / insulationConductivity(wool, celsius(52), 0)) / wool.moistureFactor;
	const pipe: Pipe = {
		length: 1,
		innerDiameter: outerDiameter - 0.002,
		outerDiameter,
		wallConductivity: 380,
		wallHeatCapacity: 3.45e6,
		roughness: 1.5e-6,
		insulation: { material: "mineralWool", thickness, moisture, surfaceEmittance: 0.9 },
	};
	return pipeHeatLoss(pipe, {
		fluidTemperature: celsius(80),
		insideFilm: 1e6,
		ambient: celsius(20),
		wind,
		pressure: 101_325,
	});
};
const ISO_12241 =
	"ISO 12241:2008, calculation scheme for pipes, lagging of 0.040 W/mK; worked out apart from this project";
const table = [
	[0.015, 0, 47.8, 122.6],
	[0.015, 0.013, 12.6, 14.3],
	[0.015, 0.02, 10.4, 11.3],
	[0.015, 0.03, 8.7, 9.2],
	[0.015, 0.05, 7.1, 7.3],
	[0.022, 0, 66.3, 174.1],
	[0.022, 0.013, 16.0, 18.3],
	[0.022, 0.02, 12.9, 14.1],
	[0.022, 0.03, 10.6, 11.2],
	[0.022, 0.05, 8.4, 8.7],
] as const;
const lagged: Tolerance = {
	relative: 0.015,
	reason: "the films differ as bare; k meets 0.040 at 52 °C only",
};
const bareStill: Tolerance = {
	relative: 0.075,
	reason: "ISO's still-air film lies above Churchill & Chu's on thin pipes",
};
const bareWindy: Tolerance = {
	relative: 0.27,
	reason:
		"ISO's outdoor film is made for large pipes; Hilpert's measured thin cylinders side with Churchill & Bernstein",
};
const losses: ReferenceSet = {
	quantity: "heat loss of a pipe at 80 °C in air of 20 °C",
	unit: "W/m",
	rows: table.flatMap(([diameter, thickness, still, windy]) => {
		const name = `${diameter * 1000} mm pipe, ${thickness * 1000} mm lagging`;
		return [
			row(
				`${name}, still air`,
				still,
				thickness === 0 ? bareStill : lagged,
				ISO_12241,
				false,
				() => laid(diameter, thickness, 0).perMetre,
			),
			row(
				`${name}, 3 m/s`,
				windy,
				thickness === 0 ? bareWindy : lagged,
				ISO_12241,
				false,
				() => laid(diameter, thickness, 3).perMetre,
			),
		];
	}),
};
const skins: ReferenceSet = {
	quantity: "skin temperature of a lagged 22 mm pipe at 80 °C in still air of 20 °C",
	unit: "°C",
	rows: (
		[
			[0.013, 30.4],
			[0.02, 27.0],
			[0.03, 24.7],
			[0.05, 22.8],
		] as const
	).map(([thickness, skin]) =>
		row(
			`${thickness * 1000} mm`,
			skin,
			{ absolute: 0.45, reason: "ISO's still-air film is higher by 4 % or so" },
			ISO_12241,
			false,
			() => laid(0.022, thickness, 0).surfaceTemperature - 273.15,
		),
	),
};

const wetness = (id: string, moisture: number): number => {
	const material = insulationMaterial(id);
	return insulationConductivity(material, 300, moisture) / insulationConductivity(material, 300, 0);
};
const ISO_10456 = "ISO 10456:2007, equation 4 and table 4";
const threeDecimals: Tolerance = { absolute: 6e-4, reason: "three decimals" };
const moisture: ReferenceSet = {
	quantity: "conductivity of damp lagging over dry",
	unit: "-",
	rows: (
		[
			["mineralWool", 0.01, 1.041],
			["mineralWool", 0.03, 1.127],
			["mineralWool", 0.05, 1.221],
			["polyurethane", 0.01, 1.062],
			["polyurethane", 0.05, 1.35],
		] as const
	).map(([id, share, factor]) =>
		row(`${id}, ${share * 100} % water by volume`, factor, threeDecimals, ISO_10456, true, () =>
			wetness(id, share),
		),
	),
};

const bands = [
	["mineralWool", 10, 0.0345],
	["mineralWool", 50, 0.0385],
	["mineralWool", 100, 0.0445],
	["mineralWool", 150, 0.053],
	["mineralWool", 200, 0.0635],
	["mineralWool", 300, 0.09],
	["elastomericFoam", 0, 0.0345],
	["polyurethane", 50, 0.026],
] as const;
const conductivity: ReferenceSet = {
	quantity: "conductivity of dry lagging",
	unit: "W/mK",
	rows: bands.map(([id, t, k]) =>
		row(
			`${id} at ${t} °C`,
			k,
			{ relative: 0.05, reason: "half the width of the band that products declare" },
			`${insulationMaterial(id).source}; middle of the band`,
			true,
			() => insulationConductivity(insulationMaterial(id), celsius(t), 0),
		),
	),
};

export const sets: readonly ReferenceSet[] = [
	inside,
	examples,
	conduction,
	losses,
	skins,
	moisture,
	conductivity,
];
