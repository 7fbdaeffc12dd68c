import { ICE_POINT } from "../constants.ts";
import { DomainError, requireWithin } from "../errors.ts";
import { INSULATION_MATERIALS, type InsulationId, type InsulationMaterial } from "./insulation-materials.ts";

/** A layer of insulation around a pipe, a receiver or a tank. */
export interface Insulation {
	readonly material: string; // an id known to `insulationMaterial`
	readonly thickness: number; // [m], 0 for none
	readonly moisture: number; // water by volume, 0–1
	readonly surfaceEmittance: number; // outer skin, 0–1
}

/** The material with an identifier; DomainError contradictory where the table does not have it. */
export function insulationMaterial(id: string): InsulationMaterial {
	if (!Object.hasOwn(INSULATION_MATERIALS, id))
		throw new DomainError(
			"contradictory",
			"insulation.material",
			"this insulation material is not in the table",
			{ material: id },
		);
	return INSULATION_MATERIALS[id as InsulationId];
}

/** Thermal conductivity of insulation at its mean temperature, dry or damp: k = (a + b t + c t²) · e^(f ψ).
 *  @param material  a row of the table     @param meanTemperature  mean of hot and cold face [K]
 *  @param moisture  ψ, water by volume, 0 for dry [-]     @returns k [W/mK]
 *  Range   0 ≤ ψ ≤ mostMoisture, else DomainError out_of_range. Temperature: see `insulationOutsideRange`
 *  Error   ± 8 % among products of one kind; more on site, through gaps and settling. Above 60 °C, vapour in wet
 *          open-cell insulation carries additional heat that this factor neglects: factors of 2 to 4 (common practice, no source)
 *  Source  ISO 10456:2007, eq. 4 and table 4 (values from memory); coefficients: see each row
 *  Check   five moisture factors, tests/reference/pipe.reference.ts */
export function insulationConductivity(
	material: InsulationMaterial,
	meanTemperature: number,
	moisture: number,
): number {
	const [a, b, c] = material.conductivity;
	const t = meanTemperature - ICE_POINT;
	const dry = a + t * (b + t * c);
	if (moisture === 0) return dry;
	requireWithin("insulation.moisture", moisture, 0, material.mostMoisture);
	return dry * Math.exp(material.moistureFactor * moisture);
}

/** Whether a layer between two face temperatures [K] is outside the fitted range or above the service limit of its material. */
export function insulationOutsideRange(
	material: InsulationMaterial,
	hotFace: number,
	coldFace: number,
): boolean {
	const mean = (hotFace + coldFace) / 2;
	return !(mean >= material.range[0] && mean <= material.range[1] && hotFace <= material.serviceLimit);
}
