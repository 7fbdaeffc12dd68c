/** Steady state of an instant heater under constant sun and air. */
export type Steady = Flowing | { readonly kind: "none" } | { readonly kind: "lostInPipe" }; // there would be a flow at the focus, but the pipe to the tap loses more than any flow carries

interface Flowing {
	readonly kind: "flows";
	readonly massFlow: number; // of water at the wanted temperature [kg/s]
	readonly power: number; // of the water at the tap: massFlow × rise of enthalpy [W]
	readonly hottestWall: number | undefined; // on the water side [K]; unknown for an efficiency line
	readonly outlet: SteadyOutlet | undefined; // for water directly through the focus
	readonly oil: SteadyOil | undefined; // with a vessel between receiver and water
}

/** The pipe to the tap while water runs steadily. */
export interface SteadyOutlet {
	readonly leaving: number; // outlet temperature of the receiver [K]
	readonly loss: number; // of the pipe; negative where warmer air heats it [W]
}

/** The oil while water runs steadily. */
export interface SteadyOil {
	readonly temperature: number; // of the vessel [K]
	readonly film: number | undefined; // highest, in the receiver [K]; unknown for an efficiency line
	readonly atLimit: boolean; // hotter oil would transfer more heat, but it is at its limit and the dish turns away
}

/** Whether water flows at the tap. */
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

/** Mass flow [kg/s]; 0 without flow. */
export function flowOf(steady: Steady): number {
	return flows(steady) ? steady.massFlow : 0;
}

/** Heat of the water at the tap relative to the feed [W]; 0 without flow. */
export function powerOf(steady: Steady): number {
	return flows(steady) ? steady.power : 0;
}

/** Whether water boils at its hottest wall. */
export function boilsOnWall(steady: Steady, boiling: number): boolean {
	return flows(steady) && steady.hottestWall !== undefined && steady.hottestWall >= boiling;
}
