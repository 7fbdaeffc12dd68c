/** What the true plant does over what the correlations say of it: multipliers of heat flows that no drawing settles. */
export interface ModelFactors {
	readonly receiverConvection: number; // heat the absorber, or its cover, gives the air by convection
	readonly coilFilm: number; // film coefficient inside the coil
	readonly laggingLoss: number; // heat through the insulation of pipes and receiver, gaps and supports included
	readonly tankLoss: number; // heat through the tank's shell
}

/** The plant as the correlations have it. */
export const AS_CORRELATED: ModelFactors = {
	receiverConvection: 1,
	coilFilm: 1,
	laggingLoss: 1,
	tankLoss: 1,
};
