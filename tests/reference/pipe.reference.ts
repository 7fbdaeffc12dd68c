import { effectivenessUniform, logMeanDifference } from "../../src/heat/exchanger.ts";
import { insulationConductivity, insulationMaterial } from "../../src/heat/insulation.ts";
import { nusseltGnielinski, nusseltHausen, nusseltPipe } from "../../src/heat/internal-flow.ts";
import type { Pipe } from "../../src/loop/loop.ts";
import { criticalRadius, type PipeHeatLoss, pipeHeatLoss, shellResistance } from "../../src/loop/pipe.ts";
import type { Kind, ReferenceRow, ReferenceSet, Tolerance } from "./reference.ts";

const celsius = (t: number): number => t + 273.15;
const CENGEL = "Çengel, Heat Transfer: A Practical Approach, 2e, McGraw-Hill 2003, example 8-3";
const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6e, Wiley 2007";

const row = (
	name: string,
	published: number,
	tolerance: Tolerance,
	source: string,
	kind: Kind,
	computed: () => number,
): ReferenceRow => ({ name, published, computed, tolerance, source, kind });
const digits = (absolute: number, reason = "half of the last digit"): Tolerance => ({
	absolute,
	basis: "digits",
	reason,
});

const HAUSEN = "Hausen, Z. VDI Beih. Verfahrenstechnik 4 (1943) 91–98";
const inside: ReferenceSet = {
	quantity: "inside a straight tube, Nusselt number",
	unit: "-",
	role: "check",
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
				{ relative: 0.0023, basis: "digits", reason: "three digits" },
				"Gnielinski, Int. Chem. Eng. 16 (1976) 359–368",
				"formula",
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
			row(`laminar, Graetz ${Gz}`, Nu, digits(0.005), HAUSEN, "formula", () => nusseltHausen(Gz)),
		),
		row(
			"laminar, Graetz 11 000",
			39.01352358988535,
			{ relative: 1e-9, basis: "digits", reason: "more digits than that" },
			`${HAUSEN}, by the open library ht's own tests`,
			"library",
			() => nusseltHausen(11_000),
		),
	],
};
const insideByOthers: ReferenceSet = {
	quantity: "inside a straight tube against other correlations, Nusselt number",
	unit: "-",
	role: "sanity",
	why: "Dittus & Boelter for Gnielinski; Edwards's constant 0.065 where Hausen has 0.0668",
	rows: [
		row(
			"air Re 1e4, Pr 0.7, Dittus & Boelter",
			31.6,
			{ relative: 0.25, basis: "source", reason: "an older fit, ± 25 % of the data" },
			`Dittus & Boelter 1930 in ${INCROPERA}, equation 8.60`,
			"formula",
			() => nusseltPipe(1e4, 0.7, 0.001),
		),
		row(
			"oil line through a lake, Re 666, Pr 10 400, Edwards",
			37.3,
			{ relative: 0.05, basis: "practice", reason: "one constant 3 % apart, and the book's rounding" },
			CENGEL,
			"memory",
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

const coolers: ReferenceSet = {
	quantity: "length of a counterflow oil cooler, whole example",
	unit: "m",
	role: "check",
	rows: [
		row(
			"engine oil 100 → 60 °C by water from 30 °C",
			65.9,
			{
				relative: 0.005,
				basis: "source",
				reason: "water film by Gnielinski instead of Dittus & Boelter, 10 % of a fiftieth of the resistance",
			},
			`${INCROPERA}, example 11.1`,
			"print",
			coolerLength,
		),
	],
};
const lakeOutlet: ReferenceSet = {
	quantity: "outlet of an oil line through a lake",
	unit: "°C",
	role: "sanity",
	why: "the book has Edwards's constant 0.065 where the model has Hausen's 0.0668",
	rows: [
		row(
			"20 °C into water of 0 °C",
			19.71,
			{ absolute: 0.02, basis: "practice", reason: "5 % of a drop of 0.29 K, and half of the last digit" },
			CENGEL,
			"memory",
			() => lake().outlet,
		),
	],
};
const lakeHeat: ReferenceSet = {
	quantity: "heat of an oil line through a lake",
	unit: "W",
	role: "sanity",
	why: "the book has Edwards's constant 0.065 where the model has Hausen's 0.0668",
	rows: [
		row(
			"20 °C into water of 0 °C",
			6.75e4,
			{ relative: 0.05, basis: "practice", reason: "one constant 3 % apart, and the book's rounding" },
			CENGEL,
			"memory",
			() => lake().heat,
		),
	],
};

/** Resistance of lagging in series with a constant film: steam pipe, radii 57 and 107 mm. */
const lagging = shellResistance(0.057, 0.107, 0.045);
const film = 1 / (2 * Math.PI * 0.107 * 10);
const STEAM =
	"Textbook example: steam 150 °C, air 20 °C, radii 57 and 107 mm, k 0.045, h 10 (quoted in a public copy)";
const conduction: ReferenceSet = {
	quantity: "conduction through lagging",
	unit: "W/m",
	role: "check",
	rows: [
		row(
			"radii 50 and 100 mm, k 0.05, 200 K",
			90.6472,
			digits(5e-5),
			"hollow cylinder, 2πkΔT/ln(r₂/r₁)",
			"formula",
			() => 200 / shellResistance(0.05, 0.1, 0.05),
		),
		row("steam pipe, loss", 54.7, digits(0.05), STEAM, "print", () => 130 / (lagging + film)),
	],
};
const resistance: ReferenceSet = {
	quantity: "resistance of lagging",
	unit: "mK/W",
	role: "check",
	rows: [row("steam pipe", 2.227, digits(0.0005), STEAM, "print", () => lagging)],
};
const MOST_LOSS = "k/h, where dq/dr = 0";
const criticalRadii: ReferenceSet = {
	quantity: "critical radius of lagging",
	unit: "mm",
	role: "check",
	rows: [
		row(
			"cable k 0.155, h 8.5",
			18.2,
			digits(0.05),
			"Textbook example: cable, k 0.155, h 8.5, radius 5 mm (quoted in a public copy)",
			"print",
			() => criticalRadius(0.155, 8.5) * 1000,
		),
		row("k 0.04, h 8", 5, digits(1e-9, "exact"), MOST_LOSS, "formula", () => criticalRadius(0.04, 8) * 1000),
		row(
			"k 0.13, h 10",
			13,
			digits(1e-9, "exact"),
			MOST_LOSS,
			"formula",
			() => criticalRadius(0.13, 10) * 1000,
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
const ISO_12241 = "ISO 12241:2008, calculation scheme for pipes, lagging of 0.040 W/mK";
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
const OTHER_FILMS = "ISO's films of air differ from the model's, most on thin bare pipes in wind";
const lagged: Tolerance = {
	relative: 0.03,
	basis: "practice",
	reason: "films matter little under lagging: a third of them is some 3 % of the loss",
};
const bareStill: Tolerance = {
	relative: 0.1,
	basis: "practice",
	reason: "correlations of still air on thin pipes differ by a tenth (common practice, no source)",
};
const bareWindy: Tolerance = {
	relative: 0.4,
	basis: "practice",
	reason:
		"ISO's outdoor film is made for large pipes; Hilpert's measured thin cylinders side with Churchill & Bernstein",
};
const losses: ReferenceSet = {
	quantity: "heat loss of a pipe at 80 °C in air of 20 °C",
	unit: "W/m",
	role: "sanity",
	why: OTHER_FILMS,
	rows: table.flatMap(([diameter, thickness, still, windy]) => {
		const name = `${diameter * 1000} mm pipe, ${thickness * 1000} mm lagging`;
		return [
			row(
				`${name}, still air`,
				still,
				thickness === 0 ? bareStill : lagged,
				ISO_12241,
				"formula",
				() => laid(diameter, thickness, 0).perMetre,
			),
			row(
				`${name}, 3 m/s`,
				windy,
				thickness === 0 ? bareWindy : lagged,
				ISO_12241,
				"formula",
				() => laid(diameter, thickness, 3).perMetre,
			),
		];
	}),
};
const skins: ReferenceSet = {
	quantity: "skin temperature of a lagged 22 mm pipe at 80 °C in still air of 20 °C",
	unit: "°C",
	role: "sanity",
	why: OTHER_FILMS,
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
			{ absolute: 1, basis: "practice", reason: "a tenth of the film, of 3 to 10 K over the air" },
			ISO_12241,
			"formula",
			() => laid(0.022, thickness, 0).surfaceTemperature - 273.15,
		),
	),
};

const wetness = (id: string, moisture: number): number => {
	const material = insulationMaterial(id);
	return insulationConductivity(material, 300, moisture) / insulationConductivity(material, 300, 0);
};
const ISO_10456 = "ISO 10456:2007, equation 4 and table 4";
const moisture: ReferenceSet = {
	quantity: "conductivity of damp lagging over dry",
	unit: "-",
	role: "check",
	rows: (
		[
			["mineralWool", 0.01, 1.041],
			["mineralWool", 0.03, 1.127],
			["mineralWool", 0.05, 1.221],
			["polyurethane", 0.01, 1.062],
			["polyurethane", 0.05, 1.35],
		] as const
	).map(([id, share, factor]) =>
		row(`${id}, ${share * 100} % water by volume`, factor, digits(5e-4), ISO_10456, "memory", () =>
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
	role: "fit",
	why: "the polynomials were drawn through the middle of these bands",
	rows: bands.map(([id, t, k]) =>
		row(
			`${id} at ${t} °C`,
			k,
			{ relative: 0.05, basis: "claim", reason: "half the width of the band that products declare" },
			`${insulationMaterial(id).source}; middle of the band`,
			"memory",
			() => insulationConductivity(insulationMaterial(id), celsius(t), 0),
		),
	),
};

export const sets: readonly ReferenceSet[] = [
	inside,
	insideByOthers,
	coolers,
	lakeOutlet,
	lakeHeat,
	conduction,
	resistance,
	criticalRadii,
	losses,
	skins,
	moisture,
	conductivity,
];
