import { nusseltCrossFlow } from "../../src/heat/cross-flow.ts";
import {
	effectivenessCounterflow,
	effectivenessUniform,
	logMeanDifference,
} from "../../src/heat/exchanger.ts";
import { criticalReynoldsHelical, nusseltHelical } from "../../src/heat/helical-coil.ts";
import {
	nusseltHorizontalCylinder,
	nusseltHotPlateDown,
	nusseltHotPlateUp,
	nusseltVerticalPlate,
} from "../../src/heat/natural-convection.ts";
import { cylinderFilm, plateFilm } from "../../src/heat/outer-film.ts";
import { nusseltFlatPlate } from "../../src/heat/plate-flow.ts";
import { radiativeCoefficient, skyTemperature } from "../../src/heat/radiation.ts";
import type { Kind, ReferenceRow, ReferenceSet, Tolerance } from "./reference.ts";

const SEA_LEVEL = 101_325;
const celsius = (t: number): number => t + 273.15;
const CENGEL = "Çengel, Heat Transfer: A Practical Approach, 2e, McGraw-Hill 2003";
const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6e, Wiley 2007";
const HT = "by the open library ht's own tests";
/** Half of the last digit, and what the digits of the inputs make of it. */
const digits = (relative: number, of: string): Tolerance => ({
	relative,
	basis: "digits",
	reason: `last printed digit of ${of}`,
});
const half = (absolute: number): Tolerance => ({
	absolute,
	basis: "digits",
	reason: "half of the last digit",
});
const many: Tolerance = { relative: 1e-9, basis: "digits", reason: "more digits than that" };
const ownAir: Tolerance = {
	relative: 0.025,
	basis: "source",
	reason: "the example reads air from its own table; two textbooks' tables lie up to 2.5 % apart at 60 °C",
};

const row = (
	name: string,
	published: number,
	tolerance: Tolerance,
	source: string,
	kind: Kind,
	computed: () => number,
): ReferenceRow => ({ name, published, computed, tolerance, source, kind });

const still = cylinderFilm(0.1, celsius(165), celsius(23), 0, SEA_LEVEL, 0.85);
const thin = cylinderFilm(0.08, celsius(70), celsius(20), 0, SEA_LEVEL, 1);
const windy = cylinderFilm(0.1, celsius(110), celsius(10), 8, SEA_LEVEL, 0);
const duct = (facing: "up" | "down" | "side") =>
	plateFilm(
		{ facing, naturalLength: facing === "side" ? 0.3 : 0.375, windLength: 1, emittance: 0 },
		celsius(45),
		celsius(15),
		0,
		SEA_LEVEL,
	).convective;

const CHURCHILL_BERNSTEIN = "Churchill & Bernstein, J. Heat Transfer 99 (1977) 300–306";
const crossFlow: ReferenceSet = {
	quantity: "cylinder in wind, Nusselt number",
	unit: "-",
	role: "check",
	rows: [
		row("Re 6071, Pr 0.70", 40.6, half(0.05), `${INCROPERA}, example 7.3`, "print", () =>
			nusseltCrossFlow(6071, 0.7),
		),
		row("Re 6071, Pr 0.7", 40.63708594124974, many, `${CHURCHILL_BERNSTEIN}, ${HT}`, "library", () =>
			nusseltCrossFlow(6071, 0.7),
		),
		row("Re 42 190, Pr 0.7202", 124, half(0.5), `${CENGEL}, example 7-5`, "memory", () =>
			nusseltCrossFlow(42_190, 0.7202),
		),
		...(
			[
				[1e2, 5.16],
				[1e3, 15.93],
				[1e4, 53.3],
				[1e5, 214.1],
				[1e6, 1227],
			] as const
		).map(([Re, Nu]) =>
			row(`Re ${Re}, Pr 0.7`, Nu, digits(0.001, "three to four"), CHURCHILL_BERNSTEIN, "formula", () =>
				nusseltCrossFlow(Re, 0.7),
			),
		),
	],
};

const plateInWind: ReferenceSet = {
	quantity: "flat plate in wind, Nusselt number",
	unit: "-",
	role: "check",
	rows: [
		row("laminar, Re 1e5, Pr 0.7", 186.4, half(0.05), `${INCROPERA}, equation 7.30`, "formula", () =>
			nusseltFlatPlate(1e5, 0.7),
		),
		row("mixed, Re 1e6, Pr 0.7", 1299, half(0.5), `${INCROPERA}, equation 7.38`, "formula", () =>
			nusseltFlatPlate(1e6, 0.7),
		),
	],
};

const CHURCHILL_CHU = "Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975)";
const Gr = 2.63e9;
const freeConvection: ReferenceSet = {
	quantity: "free convection, Nusselt number",
	unit: "-",
	role: "check",
	rows: [
		row("pipe, Ra 1.869e6, Pr 0.7241", 17.4, half(0.05), `${CENGEL}, example 9-1`, "print", () =>
			nusseltHorizontalCylinder(1.869e6, 0.7241),
		),
		row("pipe, Gr 2.63e9, Pr 0.69", 139.13493970073597, many, `${CHURCHILL_CHU}, ${HT}`, "library", () =>
			nusseltHorizontalCylinder(Gr * 0.69, 0.69),
		),
		row("upright plate, Ra 1.813e9, Pr 0.69", 147, half(0.5), `${INCROPERA}, example 9.2`, "print", () =>
			nusseltVerticalPlate(1.813e9, 0.69),
		),
		row(
			"upright plate, Gr 2.63e9, Pr 0.69",
			147.16185223770603,
			many,
			`${CHURCHILL_CHU}, ${HT}`,
			"library",
			() => nusseltVerticalPlate(Gr * 0.69, 0.69),
		),
		...(
			[
				[1e5, 9.27],
				[1e6, 17.5],
				[1e7, 34.4],
				[1e8, 69.4],
			] as const
		).map(([Ra, Nu]) =>
			row(
				`tube in water, Ra ${Ra}, Pr 5`,
				Nu,
				digits(0.003, "three"),
				`${CHURCHILL_CHU} 1049–1053`,
				"formula",
				() => nusseltHorizontalCylinder(Ra, 5),
			),
		),
		row("face up, Gr 3.21e8, Pr 5.54", 181.73121274384457, many, `McAdams 1954, ${HT}`, "library", () =>
			nusseltHotPlateUp(3.21e8 * 5.54),
		),
		row("face down, Gr 3.21e8, Pr 5.54", 55.44564799362829, many, `McAdams 1954, ${HT}`, "library", () =>
			nusseltHotPlateDown(3.21e8 * 5.54),
		),
	],
};
const morgan: ReferenceSet = {
	quantity: "free convection from a tube against Morgan, Nusselt number",
	unit: "-",
	role: "sanity",
	why: "another correlation of the same data; Churchill & Chu lie below it here",
	rows: [
		row(
			"tube, Ra 1e5, Pr 0.7",
			8.54,
			{
				relative: 0.25,
				basis: "practice",
				reason: "correlations of free convection differ by a quarter (common practice, no source)",
			},
			`Morgan, Adv. Heat Transfer 11 (1975) 199–264, as quoted in ${INCROPERA}, table 9.1`,
			"formula",
			() => nusseltHorizontalCylinder(1e5, 0.7),
		),
	],
};

const perMetre: ReferenceSet = {
	quantity: "heat that a bare pipe loses per metre, whole examples",
	unit: "W/m",
	role: "check",
	rows: [
		row(
			"pipe 0.1 m, 165 °C in 23 °C still air, emittance 0.85",
			763,
			ownAir,
			`${INCROPERA}, example 9.4`,
			"memory",
			() => (still.convective + still.radiative) * Math.PI * 0.1 * 142,
		),
		row(
			"pipe 10 cm, 110 °C in 10 °C air at 8 m/s",
			1093,
			{ ...ownAir, relative: 0.03, reason: `${ownAir.reason}, and the result is rounded twice` },
			`${CENGEL}, example 7-5`,
			"memory",
			() => windy.convective * Math.PI * 0.1 * 100,
		),
	],
};
const wholePipe: ReferenceSet = {
	quantity: "heat that a bare pipe loses in still air, whole example",
	unit: "W",
	role: "check",
	rows: [
		row(
			"pipe 8 cm × 6 m, 70 °C in 20 °C, convected",
			443,
			ownAir,
			`${CENGEL}, example 9-1`,
			"print",
			() => thin.convective * Math.PI * 0.08 * 6 * 50,
		),
		row(
			"the same, radiated black",
			553,
			{ relative: 0.003, basis: "source", reason: "the book rounds the ice point to 273 K" },
			`${CENGEL}, example 9-1`,
			"print",
			() => radiativeCoefficient(1, celsius(70), celsius(20)) * Math.PI * 0.08 * 6 * 50,
		),
	],
};
const faces: ReferenceSet = {
	quantity: "free convection from the faces of a duct, whole example",
	unit: "W/m²K",
	role: "check",
	rows: [
		row("duct 45 °C in 15 °C, top", 5.47, ownAir, `${INCROPERA}, example 9.3`, "print", () => duct("up")),
		row("duct, bottom", 2.07, ownAir, `${INCROPERA}, example 9.3`, "print", () => duct("down")),
	],
};
const sides: ReferenceSet = {
	quantity: "free convection from the sides of a duct by another equation",
	unit: "W/m²K",
	role: "sanity",
	why: "the book takes Churchill & Chu's equation for laminar layers alone, the model that for all",
	rows: [
		row(
			"duct 45 °C in 15 °C, sides",
			4.23,
			{
				relative: 0.25,
				basis: "practice",
				reason: "correlations of free convection differ by a quarter (common practice, no source)",
			},
			`${INCROPERA}, example 9.3`,
			"print",
			() => duct("side"),
		),
	],
};

const radiation: ReferenceSet = {
	quantity: "radiation between a face and its surroundings",
	unit: "W/m²",
	role: "check",
	rows: (
		[
			[0.05, 68],
			[0.1, 137],
			[0.9, 1233],
		] as const
	).map(([emittance, flux]) =>
		row(
			`150 °C to 25 °C, emittance ${emittance}`,
			flux,
			half(0.5),
			"Stefan–Boltzmann law",
			"formula",
			() => radiativeCoefficient(emittance, celsius(150), celsius(25)) * 125,
		),
	),
};
const sky: ReferenceSet = {
	quantity: "clear-sky temperature",
	unit: "°C",
	role: "check",
	rows: (
		[
			[0, -24],
			[10, -10.1],
			[20, 3.9],
			[25, 11],
			[30, 18.2],
		] as const
	).map(([ambient, published]) =>
		row(
			`air of ${ambient} °C`,
			published,
			half(0.05),
			"Swinbank, Q. J. R. Meteorol. Soc. 89 (1963) 339–348: 0.0552·T^1.5, which as T⁴ is 9.3e-6·T⁶",
			"formula",
			() => skyTemperature(celsius(ambient)) - 273.15,
		),
	),
};

const critical: ReferenceSet = {
	quantity: "helical tube, critical Reynolds number",
	unit: "-",
	role: "check",
	rows: (
		[
			[0.04, 6946.792539],
			[0.05, 7437.629586],
			[0.0544, 7636.368257],
			[0.0667, 8149.017389],
			[0.1, 9318.208839],
		] as const
	).map(([ratio, Re]) =>
		row(
			`d/D ${ratio}`,
			Re,
			half(5e-7),
			"Schmidt, Chem.-Ing.-Tech. 39 (1967) 781–789, by the open library fluids 1.0.22",
			"library",
			() => criticalReynoldsHelical(ratio),
		),
	),
};

const VISCOUS = [
	[60, 73, 1057, 11.3, 11.0],
	[90, 232, 361, 15.5, 14.5],
	[120, 517, 176, 19.4, 18.2],
	[150, 997, 98, 23.4, 22.2],
] as const;
const helical: ReferenceSet = {
	quantity: "helical tube, inside Nusselt number",
	unit: "-",
	role: "check",
	rows: [
		...VISCOUS.map(([t, Re, Pr, Nu]) =>
			row(
				`engine oil ${t} °C, d/D 0.04`,
				Nu,
				{ relative: 0.01, basis: "digits", reason: "Re and Pr of the row are given to two or three digits" },
				"Janssen & Hoogendoorn, Int. J. Heat Mass Transfer 21 (1978) 1197–1206",
				"memory",
				() => nusseltHelical(Re, Pr, 0.04),
			),
		),
		...(
			[
				[3e4, 3.5, 199],
				[5e4, 7, 407.3],
			] as const
		).map(([Re, Pr, Nu]) =>
			row(
				`turbulent, Re ${Re}, Pr ${Pr}, d/D 0.05`,
				Nu,
				digits(0.001, "f and Nu"),
				"Gnielinski in VDI-Wärmeatlas, section Gc, as the open library FluidDissipation has it",
				"formula",
				() => nusseltHelical(Re, Pr, 0.05),
			),
		),
	],
};
const helicalByOthers: ReferenceSet = {
	quantity: "helical tube against other correlations, inside Nusselt number",
	unit: "-",
	role: "sanity",
	why: "other correlations: Dravid for viscous liquids, Xin & Ebadian for turbulent air",
	rows: [
		...VISCOUS.map(([t, Re, Pr, , Nu]) =>
			row(
				`engine oil ${t} °C, d/D 0.04, Dravid`,
				Nu,
				{
					relative: 0.15,
					basis: "practice",
					reason: "correlations of coils differ by some 15 % (common practice, no source)",
				},
				"Dravid et al., AIChE J. 17 (1971) 1114–1122",
				"memory",
				() => nusseltHelical(Re, Pr, 0.04),
			),
		),
		row(
			"turbulent air, Re 2e5, d/D 0.05, Xin & Ebadian",
			474.11413424344755,
			{
				relative: 0.15,
				basis: "practice",
				reason: "correlations of coils differ by some 15 % (common practice, no source)",
			},
			`Xin & Ebadian, J. Heat Transfer 119 (1997) 467–473, ${HT}`,
			"library",
			() => nusseltHelical(2e5, 0.7, 0.05),
		),
	],
};

const effectiveness: ReferenceSet = {
	quantity: "effectiveness of exchangers",
	unit: "-",
	role: "check",
	rows: [
		...(
			[
				[0.5, 0.3935],
				[1, 0.6321],
				[2, 0.8647],
				[3, 0.9502],
			] as const
		).map(([ntu, e]) =>
			row(`one uniform side, NTU ${ntu}`, e, half(5e-5), "exact: 1 − exp(−NTU)", "formula", () =>
				effectivenessUniform(ntu),
			),
		),
		row(
			"counterflow, C 0.5, NTU 2",
			0.7746,
			half(5e-5),
			"exact: [1 − e^(−NTU(1−C))]/[1 − C·e^(−NTU(1−C))]",
			"formula",
			() => effectivenessCounterflow(2, 0.5),
		),
		row("counterflow, C 1, NTU 2", 0.6667, half(5e-5), "exact: NTU/(1 + NTU)", "formula", () =>
			effectivenessCounterflow(2, 1),
		),
	],
};

const meanDifference: ReferenceSet = {
	quantity: "logarithmic mean temperature difference",
	unit: "K",
	role: "check",
	rows: [
		row(
			"counterflow oil cooler, 100→60 °C against 30→40.2 °C",
			43.2,
			half(0.05),
			`${INCROPERA}, example 11.1`,
			"print",
			() => logMeanDifference(100 - 40.2, 60 - 30),
		),
		row(
			"oil line through a lake, 20→19.71 °C at 0 °C",
			19.85,
			{ absolute: 0.01, basis: "digits", reason: "to a hundredth of a kelvin, rounded down" },
			`${CENGEL}, example 8-3`,
			"memory",
			() => logMeanDifference(20, 19.71),
		),
	],
};

export const sets: readonly ReferenceSet[] = [
	crossFlow,
	plateInWind,
	freeConvection,
	morgan,
	perMetre,
	wholePipe,
	faces,
	sides,
	radiation,
	sky,
	critical,
	helical,
	helicalByOthers,
	effectiveness,
	meanDifference,
];
