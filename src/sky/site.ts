/** Location of the plant. */
export interface Site {
	readonly latitude: number; // [rad], north positive
	readonly longitude: number; // [rad], east positive
	readonly elevation: number; // above sea level [m]
	readonly albedo: number; // reflectance of the ground, 0–1
}
