import { saturationPressure, saturationTemperature } from "../../src/fluids/saturation.ts";
import { boilingPoint, elevationAtPressure, standardPressure } from "../../src/sky/atmosphere.ts";
import type { ReferenceSet } from "./reference.ts";

const RELEASE = "IAPWS R7-97(2012), Industrial Formulation 1997";
const ISA = "ISO 2533:1975, Standard atmosphere, by geopotential altitude";

// [elevation m, pressure Pa, boiling point °C]; boiling points solved from IAPWS R7-97 eq. 30 by an independent program
const ATMOSPHERE = [
	[0, 101_325.0, 99.9743],
	[500, 95_460.8, 98.3125],
	[1000, 89_874.6, 96.6488],
	[1500, 84_556.0, 94.983],
	[2000, 79_495.2, 93.3151],
	[2500, 74_682.5, 91.6449],
	[3000, 70_108.5, 89.9723],
	[3500, 65_764.1, 88.2971],
	[4000, 61_640.2, 86.6193],
	[4500, 57_728.3, 84.9386],
	[5000, 54_019.9, 83.2549],
] as const;

// Printed by the standard against geometric altitude
const GEOMETRIC = [
	[500, 95_461],
	[1000, 89_876],
	[1500, 84_560],
	[2000, 79_501],
	[2500, 74_692],
	[3000, 70_121],
	[3500, 65_780],
	[4000, 61_660],
	[4500, 57_753],
	[5000, 54_048],
] as const;
const EARTH_RADIUS = 6_356_766; // [m] nominal, of the same standard

const digits = { relative: 2e-9, reason: "nine printed digits" };

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Saturation pressure of water",
		unit: "MPa",
		rows: (
			[
				[300, 0.353658941e-2],
				[500, 2.63889776],
				[600, 12.3443146],
			] as const
		).map(([temperature, published]) => ({
			name: `${temperature} K`,
			published,
			computed: () => saturationPressure(temperature) / 1e6,
			tolerance: digits,
			source: `${RELEASE}, Table 35`,
			fromMemory: true,
		})),
	},
	{
		quantity: "Saturation temperature of water",
		unit: "K",
		rows: (
			[
				[0.1, 372.755919],
				[1, 453.035632],
				[10, 584.149488],
			] as const
		).map(([pressure, published]) => ({
			name: `${pressure} MPa`,
			published,
			computed: () => saturationTemperature(pressure * 1e6),
			tolerance: digits,
			source: `${RELEASE}, Table 36`,
			fromMemory: true,
		})),
	},
	{
		quantity: "Boiling point under pressure",
		unit: "°C",
		rows: (
			[
				[3, 133.53],
				[4, 143.61],
				[6, 158.83],
				[7, 164.95],
				[10, 179.89],
			] as const
		).map(([bar, published]) => ({
			name: `${bar} bar absolute`,
			published,
			computed: () => saturationTemperature(bar * 1e5) - 273.15,
			tolerance: { absolute: 0.006, reason: "two printed decimals" },
			source: `${RELEASE}, region 4, independently computed`,
			fromMemory: false,
		})),
	},
	{
		quantity: "Boiling point by elevation",
		unit: "°C",
		rows: ATMOSPHERE.map(([elevation, , published]) => ({
			name: `${elevation} m`,
			published,
			computed: () => boilingPoint(standardPressure(elevation)) - 273.15,
			tolerance: { absolute: 0.001, reason: "pressure in the table rounded to 0.1 Pa; 0.02 K would do" },
			source: `${ISA}, and ${RELEASE}, region 4, independently computed`,
			fromMemory: false,
		})),
	},
	{
		quantity: "Elevation from the boiling point",
		unit: "m",
		rows: ATMOSPHERE.slice(1).map(([elevation, , celsius]) => ({
			name: `${celsius} °C`,
			published: elevation,
			computed: () => elevationAtPressure(saturationPressure(celsius + 273.15)),
			tolerance: { absolute: 1, reason: "boiling point rounded to 0.0001 K, which is 0.03 m" },
			source: `${ISA}, and ${RELEASE}, region 4, independently computed`,
			fromMemory: false,
		})),
	},
	{
		quantity: "Standard pressure, geopotential",
		unit: "Pa",
		rows: ATMOSPHERE.map(([elevation, published]) => ({
			name: `${elevation} m`,
			published,
			computed: () => standardPressure(elevation),
			tolerance: { absolute: 0.06, reason: "one printed decimal" },
			source: `${ISA}, independently computed`,
			fromMemory: false,
		})),
	},
	{
		quantity: "Standard pressure, geometric",
		unit: "Pa",
		rows: GEOMETRIC.map(([geometric, published]) => ({
			name: `${geometric} m`,
			published,
			computed: () => standardPressure((EARTH_RADIUS * geometric) / (EARTH_RADIUS + geometric)),
			tolerance: { absolute: 1, reason: "printed to the pascal" },
			source: "ISO 2533:1975, Standard atmosphere, table by geometric altitude",
			fromMemory: true,
		})),
	},
];
