/** A layer of lagging around a pipe, a receiver or a tank. */
export interface Insulation {
	readonly material: string; // an id known to `insulationMaterial`
	readonly thickness: number; // [m], 0 for none
	readonly moisture: number; // water by volume, 0–1
	readonly surfaceEmittance: number; // outer skin, 0–1
}
