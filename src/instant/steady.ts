/** What an instant heater gives for as long as sun and air stay as they are. */
export type Steady = Flowing | { readonly kind: "none" } | { readonly kind: "lostInPipe" }; // at the focus some would flow, but the pipe to the tap takes more than any flow brings

interface Flowing {
	readonly kind: "flows";
	readonly massFlow: number; // of water at the wanted temperature [kg/s]
	readonly power: number; // in the water that comes to the tap: massFlow × rise of enthalpy [W]
	readonly hottestWall: number | undefined; // that the water touches [K]; unknown of an efficiency line
	readonly outlet: SteadyOutlet | undefined; // of water straight through the focus
	readonly oil: SteadyOil | undefined; // where a vessel stands between
}

/** The pipe to the tap while water runs steadily. */
export interface SteadyOutlet {
	readonly leaving: number; // of the water leaving the receiver [K]
	readonly loss: number; // of the pipe; below 0 where warmer air heats it [W]
}

/** The oil while water runs steadily. */
export interface SteadyOil {
	readonly temperature: number; // of the vessel [K]
	readonly film: number | undefined; // hottest, in the receiver [K]; unknown of an efficiency line
	readonly atLimit: boolean; // hotter oil would pass more heat, but it stands at its limit and light is turned away
}

/** Whether water comes to the tap at all. */
export function flows(steady: Steady): steady is Flowing {
	switch (steady.kind) {
		case "flows":
			return true;
		case "none":
		case "lostInPipe":
			return false;
		default:
			return steady satisfies never;
	}
}

/** Water that flows [kg/s]; 0 where none does. */
export function flowOf(steady: Steady): number {
	return flows(steady) ? steady.massFlow : 0;
}

/** Heat in the water that comes to the tap, over the feed's [W]; 0 where none flows. */
export function powerOf(steady: Steady): number {
	return flows(steady) ? steady.power : 0;
}

/** Whether water boils on the wall it touches. */
export function boilsOnWall(steady: Steady, boiling: number): boolean {
	return flows(steady) && steady.hottestWall !== undefined && steady.hottestWall >= boiling;
}
