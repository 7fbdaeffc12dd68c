import { receiverTilt } from "../dish/receiver-tilt.ts";
import { stagnationTemperature } from "../receiver/balance.ts";
import type { Weather } from "../sky/weather.ts";
import { usableVolume } from "../tap/usable.ts";
import { energyBalance } from "./ledger.ts";
import { dayMethods } from "./methods.ts";
import type { PlantModel } from "./model.ts";
import type { DayOutcome } from "./outcome.ts";
import type { Task } from "./plant.ts";
import { type DayRecords, meanTemperature } from "./records.ts";
import { shortfall } from "./shortfall.ts";
import type { PlantState } from "./state.ts";
import type { Sight } from "./target.ts";

/** A day that has been marched to its end. */
export interface MarchedDay {
	readonly model: PlantModel;
	readonly task: Task;
	readonly weather: Weather;
	readonly records: DayRecords;
	readonly start: PlantState;
	readonly state: PlantState; // at the end
	readonly stop: Sight; // at the target, or at the end
	readonly reached: Sight | undefined;
}

const USABLE = 313.15; // [K] 40 °C, what usable litres are counted at (as V40 of EN 16147)

/** What a marched day comes to. */
export function dayOutcome(day: MarchedDay): DayOutcome {
	const { model, task, records, state, stop } = day;
	const layers = state.tank.temperatures;
	const ran = records.pumpTime > 0;
	const span = stop.time - task.start;
	return {
		reached: day.reached !== undefined,
		targetTime: day.reached?.time ?? Number.NaN,
		shortfall: day.reached ? undefined : shortfall(model, task, records),
		endTime: task.end,
		endMean: meanTemperature(layers),
		endTop: layers[0]!,
		endTemperatures: layers,
		boilingPoint: model.boilingPoint,
		boils: records.ledger.vented > 0,
		boilTime: records.boilTime,
		usableVolume: usableVolume(model.tank, layers, USABLE, task.mains),
		meanPowerToWater: span > 0 ? stop.toWater / span : 0,
		overallEfficiency: stop.beam > 0 ? stop.toWater / stop.beam : 0,
		maximumOil: records.maximumOil,
		maximumFilm: records.maximumFilm,
		stagnation: stagnation(day),
		leastFlow: ran ? records.leastFlow : Number.NaN,
		starvedTime: records.starvedTime,
		turnedAwayTime: records.tankLimitTime + records.oilLimitTime,
		pumpTime: records.pumpTime,
		unmetHeat: records.ledger.unmet,
		deliveredHeat: records.ledger.delivered,
		balance: energyBalance(records.ledger, gained(day, "loop"), gained(day, "tank")),
		series: records.columns,
		methods: dayMethods(model, records, day.weather),
		steps: records.steps,
	};
}

/** What loop or tank hold at the end more than at the start [J]. */
function gained(day: MarchedDay, part: "loop" | "tank"): number {
	const before = day.start[part].energies;
	const after = day.state[part].energies;
	let sum = 0;
	for (let i = 0; i < after.length; i++) sum += after[i]! - before[i]!;
	return sum;
}

const STAGNATION_BEAM = 1000; // [W/m²] reference sky at which stagnation is stated, with still air of
const STAGNATION_AIR = 298.15; // [K]

/** Wall temperature with the dish on the sun and the pump stopped, at the day's highest sun [K]. */
function stagnation({ model, weather }: MarchedDay): number {
	let altitude = 0;
	for (const a of weather.sunAltitude) altitude = Math.max(altitude, a);
	const absorbed = STAGNATION_BEAM * model.apertureArea * model.light.absorbed;
	return stagnationTemperature(model.plant.receiver, absorbed, {
		ambient: STAGNATION_AIR,
		wind: 0,
		pressure: model.airPressure,
		altitude: receiverTilt(model.plant.dish, model.plant.site.latitude, altitude),
	});
}
