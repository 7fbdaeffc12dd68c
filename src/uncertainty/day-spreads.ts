/** Standard deviations of the uncertain inputs of a day; 0 for an exactly known input. Relative ones are those of the logarithm. */
export interface DaySpreads {
	readonly turbidity: number; // Linke, of a clear sky [-]
	readonly measuredBeam: number; // of measured irradiance, relative [-]
	readonly reflectance: number; // [-]
	readonly cleanliness: number; // [-]
	readonly slopeError: number; // relative [-]
	readonly absorptance: number; // of the receiver's surface [-]
	readonly opticalEfficiency: number; // of an efficiency line [-]
	readonly lossCoefficient: number; // of an efficiency line, relative [-]
	readonly receiverConvection: number; // relative [-]
	readonly coilFilm: number; // relative [-]
	readonly laggingLoss: number; // of pipes and receiver, relative [-]
	readonly tankLoss: number; // relative [-]
	readonly pumpFlow: number; // relative [-]
	readonly ambient: number; // of the air, all day [K]
	readonly wind: number; // relative [-]
	readonly coldWater: number; // of the mains, and of the water in the tank at the start [K]
}
