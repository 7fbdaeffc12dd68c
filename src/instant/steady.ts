/** What an instant heater gives for as long as sun and air stay as they are. */
export type Steady =
	| {
			readonly kind: "flows";
			readonly massFlow: number; // of water at the wanted temperature [kg/s]
			readonly power: number; // to the water: massFlow × rise of enthalpy [W]
			readonly hottestWall: number | undefined; // that the water touches [K]; unknown of an efficiency line
			readonly oil: SteadyOil | undefined; // where a vessel stands between
	  }
	| { readonly kind: "none" };

/** The oil while water runs steadily. */
export interface SteadyOil {
	readonly temperature: number; // of the vessel [K]
	readonly film: number | undefined; // hottest, in the receiver [K]; unknown of an efficiency line
	readonly atLimit: boolean; // hotter oil would pass more heat, but it stands at its limit and light is turned away
}

/** Water that flows [kg/s]; 0 where none does. */
export function flowOf(steady: Steady): number {
	return steady.kind === "flows" ? steady.massFlow : 0;
}

/** Heat that the water takes up [W]; 0 where none flows. */
export function powerOf(steady: Steady): number {
	return steady.kind === "flows" ? steady.power : 0;
}

/** Whether water boils on the wall it touches. */
export function boilsOnWall(steady: Steady, boiling: number): boolean {
	return steady.kind === "flows" && steady.hottestWall !== undefined && steady.hottestWall >= boiling;
}
