interface Mirror {
	readonly reflectance: number; // solar-weighted, clean, 0–1
	readonly cleanliness: number; // 0–1, multiplies reflectance
	readonly blockedFraction: number; // of the aperture, by receiver, arms and ribs, 0–1
	readonly slopeError: number; // rms of the surface normal, per axis [rad]
	readonly specularity: number; // rms spread of the reflected ray, per axis [rad]
	readonly trackingError: number; // rms pointing error, per axis [rad]
	readonly lowestAltitude: number; // lowest altitude of the sun that the dish can track [rad]
}

/** A paraboloid that faces the sun on two axes. */
export interface TwoAxisDish extends Mirror {
	readonly kind: "twoAxis";
	readonly diameter: number; // of the aperture [m]
	readonly focalLength: number; // [m]
}

/** An off-axis paraboloid that turns on a polar axis about a fixed focus and is reshaped through the year. */
export interface OffsetPolarDish extends Mirror {
	readonly kind: "offsetPolar";
	readonly mirrorArea: number; // [m²]
	readonly focalLength: number; // distance from the centre of the mirror to the focus at equinox [m]
}

export type Dish = TwoAxisDish | OffsetPolarDish;
