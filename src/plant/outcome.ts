import type { Method } from "../methods.ts";

/** Reason why the target was not reached: the limit that prevented it. */
export type Shortfall =
	| "limitedByBoiling"
	| "limitedByHighLimit"
	| "limitedByOilLimit"
	| "noSun"
	| "sunBelowDish"
	| "pumpNeverStarted"
	| "tooLittleHeat";

/** Energy balance [J]. Loop: beam + pumpHeat = turnedAway + optical + receiver + loop losses + storedInLoop + toWater.
 *  Tank: toWater = storedInTank + drawnAboveMains + tankLoss + vented. */
export interface EnergyBalance {
	readonly beam: number; // on the aperture facing the sun, including times when the dish is turned away
	readonly pumpHeat: number; // from the pump into the fluid
	readonly turnedAway: number;
	readonly optical: {
		readonly blocked: number;
		readonly soiling: number;
		readonly mirror: number;
		readonly spillage: number;
		readonly receiverReflected: number; // by the absorber and its cover
		readonly unresolved: number; // optical loss of an efficiency line, not divided
	};
	readonly receiver: {
		readonly radiated: number;
		readonly convected: number;
		readonly conducted: number;
		readonly unresolved: number; // heat loss of an efficiency line, not divided
	};
	readonly loop: {
		readonly supplyPipe: number;
		readonly returnPipe: number;
		readonly fittings: number;
		readonly pump: number;
	};
	readonly storedInLoop: number;
	readonly toWater: number;
	readonly storedInTank: number;
	readonly drawnAboveMains: number;
	readonly tankLoss: number;
	readonly vented: number;
	readonly residual: number; // |loop defect| + |tank defect|
	readonly pumpElectricity: number; // not part of the balance
	readonly takenBack: number; // heat from the water to a colder loop, already subtracted from `toWater`; not part of the balance
}

/** Columns over the day, one row per series step. Temperatures at the instant of the row, powers as the mean since the previous row. */
export interface DaySeries {
	readonly time: readonly number[]; // unix time [s]
	readonly sunAltitude: readonly number[]; // [rad]
	readonly beam: readonly number[]; // [W/m²]
	readonly ambient: readonly number[]; // [K]
	readonly tankMean: readonly number[]; // [K]
	readonly tankTop: readonly number[]; // [K]
	readonly tankBottom: readonly number[]; // [K]
	readonly oilHot: readonly number[]; // leaving the receiver [K]
	readonly oilCold: readonly number[]; // entering the receiver [K]
	readonly flow: readonly number[]; // [m³/s]
	readonly powerToFluid: readonly number[]; // [W]
	readonly powerToWater: readonly number[]; // [W]
	readonly tankLoss: readonly number[]; // [W]
}

/** Result of a day. */
export interface DayOutcome {
	readonly reached: boolean;
	readonly targetTime: number; // unix time [s]; NaN unless reached
	readonly shortfall: Shortfall | undefined; // set unless reached
	readonly endTime: number; // [s]
	readonly endMean: number; // [K]
	readonly endTop: number; // [K]
	readonly endTemperatures: Float64Array; // [N] top first [K]
	readonly boilingPoint: number; // of the tank's water at its pressure [K]
	readonly boils: boolean;
	readonly boilTime: number; // first instant at the boiling point [s]; NaN unless it boils
	readonly usableVolume: number; // at 40 °C, mixed with mains [m³]
	readonly meanPowerToWater: number; // from start to target or end [W]
	readonly overallEfficiency: number; // heat to water over beam on the aperture, start to target or end
	readonly maximumOil: number; // [K]
	readonly maximumFilm: number; // [K]
	readonly stagnation: number; // wall temperature without flow under the reference sky [K]
	readonly leastFlow: number; // while the pump runs [m³/s]; NaN if it never runs
	readonly starvedTime: number; // time with less than 95 % of the pump's set flow [s]
	readonly turnedAwayTime: number; // [s]
	readonly pumpTime: number; // [s]
	readonly unmetHeat: number; // unmet demand at the tap [J]
	readonly deliveredHeat: number; // heat at the tap relative to the mains [J]
	readonly balance: EnergyBalance;
	readonly series: DaySeries;
	readonly methods: readonly Method[];
	readonly steps: number; // number of steps, a measure of the computing cost
}
