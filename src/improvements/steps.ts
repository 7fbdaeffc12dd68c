/** Size of one step of each improvement. */
export interface Steps {
	readonly aperture: number; // relative increase of area [-]
	readonly reflectance: number; // of a new mirror [-]
	readonly cleaning: number; // cleanliness with regular washing [-]
	readonly slopeError: number; // relative reduction [-]
	readonly receiverAperture: number; // wider or narrower, relative to its diameter [-]
	readonly selectiveCoating: number; // its emittance [-]
	readonly glazing: { readonly transmittance: number; readonly gap: number }; // of the pane [-], [m]
	readonly supplyLagging: number; // additional thickness [m]
	readonly returnLagging: number; // additional thickness [m]
	readonly pumpLagging: number; // relative reduction of the casing loss; 0 where it is insulated [-]
	readonly tankLagging: number; // additional thickness [m]
	readonly dryLagging: number; // water by volume in wet insulation [-]
	readonly flow: number; // relative increase [-]
	readonly coilLength: number; // relative increase [-]
	readonly shorterPipes: number; // relative reduction of both [-]
}

export type ImprovementId = keyof Steps;

export const IMPROVEMENTS: readonly ImprovementId[] = [
	"aperture",
	"reflectance",
	"cleaning",
	"slopeError",
	"receiverAperture",
	"selectiveCoating",
	"glazing",
	"supplyLagging",
	"returnLagging",
	"pumpLagging",
	"tankLagging",
	"dryLagging",
	"flow",
	"coilLength",
	"shorterPipes",
];
