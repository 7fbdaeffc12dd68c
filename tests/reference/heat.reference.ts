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
import type { ReferenceRow, ReferenceSet, Tolerance } from "./reference.ts";

const SEA_LEVEL = 101_325;
const celsius = (t: number): number => t + 273.15;
const CENGEL = "Çengel, Heat Transfer: A Practical Approach, 2e, McGraw-Hill 2003";
const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6e, Wiley 2007";
const CHURCHILL_BERNSTEIN =
	"Churchill & Bernstein, J. Heat Transfer 99 (1977) 300–306; worked out apart from this project";
const digits = (relative: number, of: string): Tolerance => ({
	relative,
	reason: `last printed digit of ${of}`,
});
const ownAir: Tolerance = {
	relative: 0.015,
	reason: "the example reads air properties from its own rounded table",
};

const row = (
	name: string,
	published: number,
	tolerance: Tolerance,
	source: string,
	fromMemory: boolean,
	computed: () => number,
): ReferenceRow => ({ name, published, computed, tolerance, source, fromMemory });

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

const crossFlow: ReferenceSet = {
	quantity: "cylinder in wind, Nusselt number",
	unit: "-",
	rows: [
		row("Re 6071, Pr 0.70", 40.6, digits(0.0013, "40.6"), `${INCROPERA}, example 7.3`, false, () =>
			nusseltCrossFlow(6071, 0.7),
		),
		row(
			"Re 42 190, Pr 0.7202",
			124,
			digits(0.005, "124, rounded by the book"),
			`${CENGEL}, example 7-5`,
			true,
			() => nusseltCrossFlow(42_190, 0.7202),
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
			row(`Re ${Re}, Pr 0.7`, Nu, digits(0.001, "three to four"), CHURCHILL_BERNSTEIN, false, () =>
				nusseltCrossFlow(Re, 0.7),
			),
		),
	],
};

const plateInWind: ReferenceSet = {
	quantity: "flat plate in wind, Nusselt number",
	unit: "-",
	rows: [
		row("laminar, Re 1e5, Pr 0.7", 186.4, digits(0.0005, "186.4"), `${INCROPERA}, equation 7.30`, false, () =>
			nusseltFlatPlate(1e5, 0.7),
		),
		row("mixed, Re 1e6, Pr 0.7", 1299, digits(0.0005, "1299"), `${INCROPERA}, equation 7.38`, false, () =>
			nusseltFlatPlate(1e6, 0.7),
		),
	],
};

const freeConvection: ReferenceSet = {
	quantity: "free convection, Nusselt number",
	unit: "-",
	rows: [
		row("pipe, Ra 1.869e6, Pr 0.7241", 17.4, digits(0.002, "17.40"), `${CENGEL}, example 9-1`, false, () =>
			nusseltHorizontalCylinder(1.869e6, 0.7241),
		),
		row(
			"upright plate, Ra 1.813e9, Pr 0.69",
			147,
			digits(0.0034, "147"),
			`${INCROPERA}, example 9.2`,
			false,
			() => nusseltVerticalPlate(1.813e9, 0.69),
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
				"Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053; worked out apart from this project",
				false,
				() => nusseltHorizontalCylinder(Ra, 5),
			),
		),
		row(
			"tube, Ra 1e5, Pr 0.7",
			8.54,
			{ relative: 0.1, reason: "two correlations of the same data; Churchill & Chu lie below Morgan here" },
			`Morgan, Adv. Heat Transfer 11 (1975) 199–264, quoted in ${INCROPERA}, table 9.1`,
			false,
			() => nusseltHorizontalCylinder(1e5, 0.7),
		),
		row(
			"face up, Ra 1e7 (0.15 Ra^1/3)",
			32.3,
			digits(0.0016, "32.3"),
			`${INCROPERA}, equation 9.31`,
			true,
			() => nusseltHotPlateUp(1e7),
		),
		row(
			"face down, Ra 1e8 (0.27 Ra^1/4)",
			27,
			digits(0.001, "27.0"),
			`${INCROPERA}, equation 9.32`,
			true,
			() => nusseltHotPlateDown(1e8),
		),
	],
};

const films: ReferenceSet = {
	quantity: "outer film of pipes and flat faces, whole examples",
	unit: "W/m, W or W/m²K",
	rows: [
		row(
			"pipe 0.1 m, 165 °C in 23 °C still air, W/m",
			763,
			ownAir,
			`${INCROPERA}, example 9.4`,
			true,
			() => (still.convective + still.radiative) * Math.PI * 0.1 * 142,
		),
		row(
			"pipe 8 cm × 6 m, 70 °C in 20 °C, convected W",
			443,
			ownAir,
			`${CENGEL}, example 9-1`,
			false,
			() => thin.convective * Math.PI * 0.08 * 6 * 50,
		),
		row(
			"the same, radiated black W",
			553,
			{ relative: 0.003, reason: "the book rounds the ice point to 273 K" },
			`${CENGEL}, example 9-1`,
			false,
			() => radiativeCoefficient(1, celsius(70), celsius(20)) * Math.PI * 0.08 * 6 * 50,
		),
		row(
			"pipe 10 cm, 110 °C in 10 °C air at 8 m/s, W/m",
			1093,
			{ relative: 0.03, reason: "the book's air conducts 2.5 % less than Incropera's table A.4 and ours" },
			`${CENGEL}, example 7-5`,
			true,
			() => windy.convective * Math.PI * 0.1 * 100,
		),
		row("duct 45 °C in 15 °C, top W/m²K", 5.47, ownAir, `${INCROPERA}, example 9.3`, false, () => duct("up")),
		row("duct, bottom W/m²K", 2.07, ownAir, `${INCROPERA}, example 9.3`, false, () => duct("down")),
		row(
			"duct, sides W/m²K",
			4.23,
			{
				relative: 0.16,
				reason: "the book uses Churchill & Chu's second equation, for laminar layers, 15 % lower",
			},
			`${INCROPERA}, example 9.3`,
			false,
			() => duct("side"),
		),
	],
};

const radiation: ReferenceSet = {
	quantity: "radiation and clear-sky temperature",
	unit: "W/m² or °C",
	rows: [
		...(
			[
				[0.05, 68],
				[0.1, 137],
				[0.9, 1233],
			] as const
		).map(([emittance, flux]) =>
			row(
				`150 °C to 25 °C, emittance ${emittance}, W/m²`,
				flux,
				{ absolute: 0.51, reason: "printed to the watt" },
				"Stefan–Boltzmann law, worked out apart from this project",
				false,
				() => radiativeCoefficient(emittance, celsius(150), celsius(25)) * 125,
			),
		),
		...(
			[
				[0, -24],
				[10, -10.2],
				[20, 3.9],
				[25, 11],
				[30, 18.2],
			] as const
		).map(([ambient, sky]) =>
			row(
				`clear sky over air of ${ambient} °C`,
				sky,
				{ absolute: 0.06, reason: "printed to a tenth of a kelvin" },
				"Swinbank, Q. J. R. Meteorol. Soc. 89 (1963) 339–348",
				true,
				() => skyTemperature(celsius(ambient)) - 273.15,
			),
		),
	],
};

const SCHMIDT = "Schmidt, Chem.-Ing.-Tech. 39 (1967) 781–789";
const critical: ReferenceSet = {
	quantity: "helical tube, critical Reynolds number",
	unit: "-",
	rows: (
		[
			[0.04, 6947],
			[0.05, 7438],
			[0.0544, 7636],
			[0.0667, 8148],
			[0.1, 9318],
		] as const
	).map(([ratio, Re]) =>
		row(`d/D ${ratio}`, Re, digits(0.0005, "d/D"), SCHMIDT, true, () => criticalReynoldsHelical(ratio)),
	),
};

const viscous: Tolerance = {
	relative: 0.01,
	reason: "Re and Pr of the row are printed to two or three digits",
};
const kin: Tolerance = {
	relative: 0.08,
	reason: "two fits of measurements on viscous liquids, known to agree within 7 %",
};
const helical: ReferenceSet = {
	quantity: "helical tube, inside Nusselt number",
	unit: "-",
	rows: [
		...(
			[
				[60, 73, 1057, 11.3, 11.0],
				[90, 232, 361, 15.5, 14.5],
				[120, 517, 176, 19.4, 18.2],
				[150, 997, 98, 23.4, 22.2],
			] as const
		).flatMap(([t, Re, Pr, own, Dravid]) => [
			row(
				`engine oil ${t} °C, d/D 0.04`,
				own,
				viscous,
				"Janssen & Hoogendoorn, Int. J. Heat Mass Transfer 21 (1978) 1197–1206",
				true,
				() => nusseltHelical(Re, Pr, 0.04),
			),
			row(
				`engine oil ${t} °C, d/D 0.04, against Dravid`,
				Dravid,
				kin,
				"Dravid et al., AIChE J. 17 (1971) 1114–1122",
				true,
				() => nusseltHelical(Re, Pr, 0.04),
			),
		]),
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
				"Gnielinski in VDI Heat Atlas, 2nd ed., Springer 2010, chapter G3",
				true,
				() => nusseltHelical(Re, Pr, 0.05),
			),
		),
		row(
			"turbulent air, Re 2e5, d/D 0.05, against Xin & Ebadian",
			474.114,
			{
				relative: 0.15,
				reason: "correlations of turbulent coils differ by 6 % among themselves, and by 15 % from the data",
			},
			"Xin & Ebadian, J. Heat Transfer 119 (1997) 467–473, as evaluated in an open heat-transfer library's tests",
			false,
			() => nusseltHelical(2e5, 0.7, 0.05),
		),
	],
};

const KAYS =
	"Kays & London, Compact Heat Exchangers, 3e, McGraw-Hill 1984, chapter 2; worked out apart from this project";
const effectiveness: ReferenceSet = {
	quantity: "effectiveness of exchangers",
	unit: "-",
	rows: [
		...(
			[
				[0.5, 0.3935],
				[1, 0.6321],
				[2, 0.8647],
				[3, 0.9502],
			] as const
		).map(([ntu, e]) =>
			row(`one uniform side, NTU ${ntu}`, e, { absolute: 5e-5, reason: "four digits" }, KAYS, false, () =>
				effectivenessUniform(ntu),
			),
		),
		row("counterflow, C 0.5, NTU 2", 0.7746, { absolute: 5e-5, reason: "four digits" }, KAYS, false, () =>
			effectivenessCounterflow(2, 0.5),
		),
		row("counterflow, C 1, NTU 2", 0.6667, { absolute: 5e-5, reason: "four digits" }, KAYS, false, () =>
			effectivenessCounterflow(2, 1),
		),
	],
};

const meanDifference: ReferenceSet = {
	quantity: "logarithmic mean temperature difference",
	unit: "K",
	rows: [
		row(
			"counterflow oil cooler, 100→60 °C against 30→40.2 °C",
			43.2,
			{ absolute: 0.05, reason: "printed to a tenth of a kelvin" },
			`${INCROPERA}, example 11.1`,
			false,
			() => logMeanDifference(100 - 40.2, 60 - 30),
		),
		row(
			"oil line through a lake, 20→19.71 °C at 0 °C",
			19.85,
			{ absolute: 0.01, reason: "printed to a hundredth of a kelvin, rounded down" },
			`${CENGEL}, example 8-3`,
			true,
			() => logMeanDifference(20, 19.71),
		),
	],
};

export const sets: readonly ReferenceSet[] = [
	crossFlow,
	plateInWind,
	freeConvection,
	films,
	radiation,
	critical,
	helical,
	effectiveness,
	meanDifference,
];
