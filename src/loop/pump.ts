import { requireWithin } from "../errors.ts";
import { bracketedRoot } from "../numeric/root.ts";
import type { Pump } from "./loop.ts";

const FLOW_TOLERANCE = 1e-6; // [-] of the set flow, finer than any flow meter

/** Duty of a running pump on a circuit. */
export interface PumpDuty {
	readonly flow: number; // [m³/s]
	readonly pressure: number; // pressure rise [Pa]
	readonly hydraulicPower: number; // flow × pressure [W]
	readonly electricPower: number; // drawn [W]
	readonly heatToFluid: number; // heat to the fluid of the closed loop [W]
	readonly starved: number; // missing share of the set flow, 0 for none
}

/** Load of a pump at a flow: 1 where it reaches its limit of head or of hydraulic power. */
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

/** Duty of a pump on a circuit: its set flow, or the flow that hydraulic power and head allow.
 *  Electric power: hydraulic power plus the losses at full load, (1 − efficiency) × electricPower, assumed constant;
 *  it is electricPower at full load and slightly less at part load (common practice, no source).
 *  Heat to the fluid: all hydraulic power, which dissipates within the closed loop, and a share of the losses.
 *  @param pump        its set flow and limits     @param pressureAt  pressure drop of the circuit [Pa], increasing with flow [m³/s]
 *  @returns           the duty; with one evaluation of the circuit unless a limit is reached */
export function pumpDuty(pump: Pump, pressureAt: (flow: number) => number): PumpDuty {
	const atSet = pressureAt(pump.flow);
	requireWithin("loop.pressureDrop", atSet, 0, Number.MAX_VALUE);
	const unlimited =
		atSet <= pump.maximumPressure && atSet * pump.flow <= pump.electricPower * pump.efficiency;
	const flow = unlimited ? pump.flow : limitedFlow(pump, pressureAt);
	const pressure = unlimited ? atSet : flow === 0 ? 0 : pressureAt(flow);
	const hydraulicPower = flow * pressure;
	const losses = (1 - pump.efficiency) * pump.electricPower;
	return {
		flow,
		pressure,
		hydraulicPower,
		electricPower: hydraulicPower + losses,
		heatToFluid: hydraulicPower + pump.heatToFluid * losses,
		starved: unlimited ? 0 : 1 - flow / pump.flow,
	};
}
