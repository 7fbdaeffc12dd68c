import { saturationPressure, saturationTemperature } from "../../src/fluids/saturation.ts";
import { boilingPoint, elevationAtPressure, standardPressure } from "../../src/sky/atmosphere.ts";
import type { ReferenceSet, Tolerance } from "./reference.ts";

const IAPWS = "IAPWS R7-97(2012), Industrial Formulation 1997, region 4, by the open library iapws 1.5.3";
const ISA = "ISO 2533:1975 / U.S. Standard Atmosphere 1976, by the open library fluids 1.0.22";

// [elevation m, pressure Pa, boiling point °C]: fluids gives the pressure at this geopotential altitude, iapws its boiling point
const ATMOSPHERE = [
	[0, 101_325.0, 99.9743],
	[500, 95_460.839, 98.31248],
	[1000, 89_874.571, 96.64875],
	[1500, 84_556.005, 94.983],
	[2000, 79_495.216, 93.31509],
	[2500, 74_682.534, 91.6449],
	[3000, 70_108.545, 89.97229],
	[3500, 65_764.084, 88.29714],
	[4000, 61_640.235, 86.6193],
	[4500, 57_728.323, 84.93861],
	[5000, 54_019.912, 83.25495],
] as const;

// The same by geometric altitude, as the standard's table has it
const GEOMETRIC = [
	[500, 95_461.289],
	[1000, 89_876.285],
	[1500, 84_559.677],
	[2000, 79_501.425],
	[2500, 74_691.756],
	[3000, 70_121.162],
	[3500, 65_780.39],
	[4000, 61_660.444],
	[4500, 57_752.576],
	[5000, 54_048.286],
] as const;
const EARTH_RADIUS = 6_356_766; // [m] nominal, of the same standard

const nine: Tolerance = { relative: 1e-9, basis: "digits", reason: "nine digits" };
const digits = (absolute: number, reason: string): Tolerance => ({ absolute, basis: "digits", reason });

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Saturation pressure of water",
		unit: "MPa",
		role: "check",
		rows: (
			[
				[300, 0.003536589413],
				[500, 2.638897756273],
				[600, 12.344314578377],
			] as const
		).map(([temperature, published]) => ({
			name: `${temperature} K`,
			published,
			computed: () => saturationPressure(temperature) / 1e6,
			tolerance: nine,
			source: `${IAPWS}; its nine digits are those of table 35`,
			kind: "library",
		})),
	},
	{
		quantity: "Saturation temperature of water",
		unit: "K",
		role: "check",
		rows: (
			[
				[0.1, 372.7559186113],
				[1, 453.0356323915],
				[10, 584.1494879985],
			] as const
		).map(([pressure, published]) => ({
			name: `${pressure} MPa`,
			published,
			computed: () => saturationTemperature(pressure * 1e6),
			tolerance: nine,
			source: `${IAPWS}; its nine digits are those of table 36`,
			kind: "library",
		})),
	},
	{
		quantity: "Boiling point under pressure",
		unit: "°C",
		role: "check",
		rows: (
			[
				[3, 133.525358],
				[4, 143.612533],
				[6, 158.832424],
				[7, 164.952753],
				[10, 179.885632],
			] as const
		).map(([bar, published]) => ({
			name: `${bar} bar absolute`,
			published,
			computed: () => saturationTemperature(bar * 1e5) - 273.15,
			tolerance: digits(5e-7, "half of the sixth decimal"),
			source: IAPWS,
			kind: "library",
		})),
	},
	{
		quantity: "Boiling point by elevation",
		unit: "°C",
		role: "check",
		rows: ATMOSPHERE.map(([elevation, , published]) => ({
			name: `${elevation} m`,
			published,
			computed: () => boilingPoint(standardPressure(elevation)) - 273.15,
			tolerance: digits(3e-5, "pressure to half of the sixth digit, which is 0.05 Pa"),
			source: `${ISA}, and ${IAPWS}`,
			kind: "library",
		})),
	},
	{
		quantity: "Elevation from the boiling point",
		unit: "m",
		role: "check",
		rows: ATMOSPHERE.slice(1).map(([elevation, , celsius]) => ({
			name: `${celsius} °C`,
			published: elevation,
			computed: () => elevationAtPressure(saturationPressure(celsius + 273.15)),
			tolerance: digits(0.01, "pressure to half of the sixth digit, which is 0.01 m"),
			source: `${ISA}, and ${IAPWS}`,
			kind: "library",
		})),
	},
	{
		quantity: "Standard pressure, geopotential",
		unit: "Pa",
		role: "check",
		rows: ATMOSPHERE.map(([elevation, published]) => ({
			name: `${elevation} m`,
			published,
			computed: () => standardPressure(elevation),
			tolerance: digits(0.05, "half of the sixth digit, as the standard prints it"),
			source: ISA,
			kind: "library",
		})),
	},
	{
		quantity: "Standard pressure, geometric",
		unit: "Pa",
		role: "check",
		rows: GEOMETRIC.map(([geometric, published]) => ({
			name: `${geometric} m`,
			published,
			computed: () => standardPressure((EARTH_RADIUS * geometric) / (EARTH_RADIUS + geometric)),
			tolerance: digits(0.05, "half of the sixth digit, as the standard prints it"),
			source: ISA,
			kind: "library",
		})),
	},
];
