import { ICE_POINT } from "../constants.ts";
import type { Provenance } from "../provenance.ts";

const celsius = (t: number): number => t + ICE_POINT;

export type InsulationId =
	| "mineralWool"
	| "glassWool"
	| "elastomericFoam"
	| "solarElastomericFoam"
	| "polyethyleneFoam"
	| "polyurethane"
	| "cellularGlass"
	| "calciumSilicate"
	| "aerogelBlanket"
	| "ceramicFibre"
	| "sheepWool";

/** A generic kind of insulation, not a product. */
export interface InsulationMaterial extends Provenance {
	readonly name: string;
	readonly conductivity: readonly [a: number, b: number, c: number]; // k = a + b·t + c·t² [W/mK], t above the ice point [K]
	readonly range: readonly [low: number, high: number]; // range of mean temperatures of the fit of k [K]
	readonly serviceLimit: number; // of its hot face, in continuous service [K]
	readonly density: number; // [kg/m³]
	readonly moistureFactor: number; // f of ISO 10456: k grows by e^(f·ψ), ψ water by volume
	readonly mostMoisture: number; // ψ up to which f holds
	readonly hazard: "none" | "fibreDust" | "carcinogenicFibre"; // to a person who cuts it
}

/** Usual insulation materials. Each conductivity is a fit through the middle of the band that products of the named standard
 *  declare, written from memory: the standards prescribe how to declare a value, not the value. Moisture factors from
 *  ISO 10456:2007, table 4, from memory; where that table lacks a material, the row names the closest one.
 *  Densities, limits and hazards are common practice, no source, unless the row states otherwise. */
export const INSULATION_MATERIALS: Readonly<Record<InsulationId, InsulationMaterial>> = {
	mineralWool: {
		name: "rock wool pipe section",
		conductivity: [0.0335, 7e-5, 3.5e-7],
		range: [celsius(0), celsius(300)],
		serviceLimit: celsius(600),
		density: 100,
		moistureFactor: 4,
		mostMoisture: 0.15,
		hazard: "fibreDust",
		basis: "standard",
		source: "EN 14303:2015, products declare 0.037–0.040 at 50 °C, 0.060–0.067 at 200 °C",
		confirmed: false,
	},
	glassWool: {
		name: "glass wool pipe section",
		conductivity: [0.032, 8e-5, 4.5e-7],
		range: [celsius(0), celsius(200)],
		serviceLimit: celsius(250),
		density: 60,
		moistureFactor: 4,
		mostMoisture: 0.15,
		hazard: "fibreDust",
		basis: "standard",
		source: "EN 14303:2015, products declare 0.033 at 10 °C, 0.043–0.046 at 100 °C",
		confirmed: false,
	},
	elastomericFoam: {
		name: "elastomeric foam, nitrile rubber",
		conductivity: [0.0345, 1e-4, 0],
		range: [celsius(-40), celsius(90)],
		serviceLimit: celsius(105),
		density: 60,
		moistureFactor: 4,
		mostMoisture: 0.1,
		hazard: "none",
		basis: "standard",
		source:
			"EN 14304:2015, products declare 0.033–0.036 at 0 °C; moisture factor of expanded polystyrene, ISO 10456:2007, table 4",
		confirmed: false,
	},
	solarElastomericFoam: {
		name: "elastomeric foam, heat-resistant EPDM rubber",
		conductivity: [0.038, 1e-4, 0],
		range: [celsius(-40), celsius(120)],
		serviceLimit: celsius(150),
		density: 70,
		moistureFactor: 4,
		mostMoisture: 0.1,
		hazard: "none",
		basis: "standard",
		source:
			"EN 14304:2015, products declare 0.036–0.040 at 0 °C; moisture factor of expanded polystyrene, ISO 10456:2007, table 4",
		confirmed: false,
	},
	polyethyleneFoam: {
		name: "polyethylene foam",
		conductivity: [0.034, 1e-4, 0],
		range: [celsius(0), celsius(80)],
		serviceLimit: celsius(95),
		density: 30,
		moistureFactor: 4,
		mostMoisture: 0.1,
		hazard: "none",
		basis: "standard",
		source:
			"EN 14313:2015, products declare 0.036–0.040 at 40 °C; moisture factor of expanded polystyrene, ISO 10456:2007, table 4",
		confirmed: false,
	},
	polyurethane: {
		name: "rigid polyurethane or polyisocyanurate foam",
		conductivity: [0.0215, 9e-5, 0],
		range: [celsius(0), celsius(100)],
		serviceLimit: celsius(120),
		density: 45,
		moistureFactor: 6,
		mostMoisture: 0.15,
		hazard: "none",
		basis: "standard",
		source: "EN 14308:2015, products declare 0.024–0.028 at 50 °C",
		confirmed: false,
	},
	cellularGlass: {
		name: "cellular glass",
		conductivity: [0.04, 9e-5, 1e-7],
		range: [celsius(0), celsius(250)],
		serviceLimit: celsius(430),
		density: 115,
		moistureFactor: 0,
		mostMoisture: 0.15,
		hazard: "none",
		basis: "standard",
		source: "EN 14305:2015, products declare 0.038–0.043 at 10 °C, 0.048–0.053 at 100 °C; absorbs no water",
		confirmed: false,
	},
	calciumSilicate: {
		name: "calcium silicate",
		conductivity: [0.052, 5e-5, 1.3e-7],
		range: [celsius(50), celsius(400)],
		serviceLimit: celsius(650),
		density: 240,
		moistureFactor: 4,
		mostMoisture: 0.15,
		hazard: "none",
		basis: "standard",
		source:
			"EN 14306:2015, products declare 0.056–0.062 at 100 °C; moisture factor of mineral wool, ISO 10456:2007, table 4",
		confirmed: false,
	},
	aerogelBlanket: {
		name: "silica aerogel blanket",
		conductivity: [0.0195, 2e-5, 1.1e-7],
		range: [celsius(0), celsius(300)],
		serviceLimit: celsius(650),
		density: 180,
		moistureFactor: 4,
		mostMoisture: 0.15,
		hazard: "fibreDust",
		basis: "standard",
		source:
			"ASTM C1728, products declare 0.021 at 25 °C, 0.028 at 200 °C; moisture factor of mineral wool, ISO 10456:2007, table 4",
		confirmed: false,
	},
	ceramicFibre: {
		name: "refractory ceramic fibre blanket",
		conductivity: [0.035, 7e-5, 2.4e-7],
		range: [celsius(100), celsius(800)],
		serviceLimit: celsius(1000),
		density: 128,
		moistureFactor: 4,
		mostMoisture: 0.15,
		hazard: "carcinogenicFibre", // category 1B, Regulation (EC) 1272/2008, Annex VI, 650-017-00-8 (value from memory)
		basis: "standard",
		source:
			"ASTM C892, products declare 0.06 at 200 °C, 0.15–0.18 at 600 °C; moisture factor of mineral wool, ISO 10456:2007, table 4",
		confirmed: false,
	},
	sheepWool: {
		name: "sheep's wool",
		conductivity: [0.037, 1.5e-4, 0],
		range: [celsius(0), celsius(70)],
		serviceLimit: celsius(100),
		density: 25,
		moistureFactor: 4,
		mostMoisture: 0.15,
		hazard: "none",
		basis: "commonPractice", // 0.036–0.042 at 10 °C
		source: "moisture factor of mineral wool, ISO 10456:2007, table 4",
		confirmed: false,
	},
};
