/** How far a builder goes with each improvement, in one step. */
export interface Steps {
	readonly aperture: number; // more area, relative [-]
	readonly reflectance: number; // that a new mirror has [-]
	readonly cleaning: number; // cleanliness that regular washing keeps [-]
	readonly slopeError: number; // less of it, relative [-]
	readonly receiverAperture: number; // wider or narrower, relative to its diameter [-]
	readonly selectiveCoating: number; // emittance that it has [-]
	readonly glazing: { readonly transmittance: number; readonly gap: number }; // of the pane [-], [m]
	readonly supplyLagging: number; // thicker by [m]
	readonly returnLagging: number; // thicker by [m]
	readonly pumpLagging: number; // less loss of the casing, relative; 0 where it is insulated [-]
	readonly tankLagging: number; // thicker by [m]
	readonly dryLagging: number; // water by volume in insulation that got wet [-]
	readonly flow: number; // more of it, relative [-]
	readonly coilLength: number; // more of it, relative [-]
	readonly shorterPipes: number; // less of both, relative [-]
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
