/** What surrounds a receiver, and how hot its absorber is. */
export interface ReceiverConditions {
	readonly wallTemperature: number; // of the absorber, mean [K]; of an efficiency line the leaving fluid's
	readonly ambient: number; // air temperature, and that of what the receiver sees [K]
	readonly wind: number; // [m/s]
	readonly pressure: number; // of the air [Pa]
	readonly altitude: number; // of the sun: how far the receiver, facing the dish, looks down [rad], 0 to π/2
}
