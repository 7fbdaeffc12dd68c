import { requireWithin } from "../errors.ts";
import { bracketedRoot } from "../numeric/root.ts";
import type { Pump } from "./loop.ts";

const FLOW_TOLERANCE = 1e-6; // [-] of the set flow: finer than any flow meter

/** What a pump does against a circuit while it runs. */
export interface PumpDuty {
	readonly flow: number; // [m³/s]
	readonly pressure: number; // it raises [Pa]
	readonly hydraulicPower: number; // flow × pressure [W]
	readonly electricPower: number; // drawn [W]
	readonly heatToFluid: number; // what ends up in the fluid of the closed loop [W]
	readonly starved: number; // share of the set flow that it fails to give, 0 for none
}

/** How hard a pump is pressed at a flow: 1 at the first limit it meets, of head or of hydraulic power. */
function load(pump: Pump, flow: number, pressure: number): number {
	return Math.max(
		pressure / pump.maximumPressure,
		(pressure * flow) / (pump.electricPower * pump.efficiency),
	);
}

function limitedFlow(pump: Pump, pressureAt: (flow: number) => number): number {
	if (!(pump.maximumPressure > 0 && pump.electricPower * pump.efficiency > 0)) return 0;
	const excess = (flow: number): number => (flow === 0 ? -1 : load(pump, flow, pressureAt(flow)) - 1);
	return bracketedRoot(excess, 0, pump.flow, FLOW_TOLERANCE * pump.flow);
}

/** Duty of a pump on a circuit: its set flow, or as much as its hydraulic power and its head allow.
 *  Electric draw: hydraulic power plus the losses at full load, (1 − efficiency) × electricPower, taken as constant;
 *  so it is electricPower at full load and a little less at part load (common practice, no source).
 *  Heat to the fluid: all hydraulic power, since it dissipates within the closed loop, and a share of the losses.
 *  @param pump        its set flow and limits     @param pressureAt  circuit's pressure drop [Pa], rising with flow [m³/s]
 *  @returns           the duty; one evaluation of the circuit unless a limit binds */
export function pumpDuty(pump: Pump, pressureAt: (flow: number) => number): PumpDuty {
	const atSet = pressureAt(pump.flow);
	requireWithin("loop.pressureDrop", atSet, 0, Number.MAX_VALUE);
	const meets = atSet <= pump.maximumPressure && atSet * pump.flow <= pump.electricPower * pump.efficiency;
	const flow = meets ? pump.flow : limitedFlow(pump, pressureAt);
	const pressure = meets ? atSet : flow === 0 ? 0 : pressureAt(flow);
	const hydraulicPower = flow * pressure;
	const losses = (1 - pump.efficiency) * pump.electricPower;
	return {
		flow,
		pressure,
		hydraulicPower,
		electricPower: hydraulicPower + losses,
		heatToFluid: hydraulicPower + pump.heatToFluid * losses,
		starved: meets ? 0 : 1 - flow / pump.flow,
	};
}
