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
import type { TargetReading } from "./target.ts";

/** A completely simulated day. */
export interface SimulatedDay {
	readonly model: PlantModel;
	readonly task: Task;
	readonly weather: Weather;
	readonly records: DayRecords;
	readonly start: PlantState;
	readonly state: PlantState; // at the end
	readonly stop: TargetReading; // at the target, or at the end
	readonly reached: TargetReading | undefined;
}

const USABLE = 313.15; // [K] 40 °C, reference of usable litres (as V40 of EN 16147)

/** Result of a simulated day. */
export function dayOutcome(day: SimulatedDay): DayOutcome {
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
		balance: energyBalance(records.ledger, storedHeat(day, "loop"), storedHeat(day, "tank")),
		series: records.columns,
		methods: dayMethods(model, records, day.weather),
		steps: records.steps,
	};
}

/** Heat stored in loop or tank at the end relative to the start [J]. */
function storedHeat(day: SimulatedDay, part: "loop" | "tank"): number {
	const before = day.start[part].energies;
	const after = day.state[part].energies;
	let sum = 0;
	for (let i = 0; i < after.length; i++) sum += after[i]! - before[i]!;
	return sum;
}

const STAGNATION_BEAM = 1000; // [W/m²] reference sky of the stagnation temperature, with still air at STAGNATION_AIR
const STAGNATION_AIR = 298.15; // [K]

/** Wall temperature with the dish on the sun and the pump off, at the highest sun of the day [K]. */
function stagnation({ model, weather }: SimulatedDay): number {
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
