/** Ratios of a real plant to its correlations: multipliers of heat flows that the dimensions of a plant do not determine. */
export interface ModelFactors {
	readonly receiverConvection: number; // convective loss of the absorber or its cover
	readonly coilFilm: number; // film coefficient inside the coil
	readonly laggingLoss: number; // heat loss through the insulation of pipes and receiver, with gaps and supports
	readonly tankLoss: number; // heat through the tank's shell
}

/** The plant as the correlations have it. */
export const AS_CORRELATED: ModelFactors = {
	receiverConvection: 1,
	coilFilm: 1,
	laggingLoss: 1,
	tankLoss: 1,
};
