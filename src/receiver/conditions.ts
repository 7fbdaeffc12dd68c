/** Surroundings of a receiver and temperature of its absorber. */
export interface ReceiverConditions {
	readonly wallTemperature: number; // of the absorber, mean [K]; for an efficiency line that of the leaving fluid
	readonly ambient: number; // temperature of the air and of the radiative surroundings [K]
	readonly wind: number; // [m/s]
	readonly pressure: number; // of the air [Pa]
	readonly altitude: number; // of the sun; angle by which the receiver faces below the horizontal [rad], 0 to π/2
}
