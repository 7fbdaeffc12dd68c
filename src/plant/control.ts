import type { Control } from "../loop/loop.ts";

/** State of the controller between steps. */
export interface ControlState {
	readonly pump: "on" | "off";
	readonly dish: "onSun" | "tankLimit" | "oilLimit"; // faces the sun, or is turned away by a limit
}

/** Sensor readings of the controller [K]. */
export interface Readings {
	readonly receiver: number; // fluid leaving the receiver
	readonly tankSensor: number; // water at the lowest turn of the coil
	readonly tankTop: number;
}

/** Next state of the controller. The pump starts when the receiver is `startDifference` hotter than the tank sensor and stops below
 *  `stopDifference`. The dish turns away at a limit and back when the reading is `hysteresis` below it. */
export function nextControl(control: Control, state: ControlState, read: Readings): ControlState {
	return { pump: pumpState(control, state, read), dish: dishState(control, state, read) };
}

function pumpState(control: Control, state: ControlState, read: Readings): ControlState["pump"] {
	const difference = read.receiver - read.tankSensor;
	const needed = state.pump === "on" ? control.stopDifference : control.startDifference;
	return difference >= needed ? "on" : "off";
}

function dishState(control: Control, state: ControlState, read: Readings): ControlState["dish"] {
	if (read.tankTop >= control.highLimit) return "tankLimit";
	if (read.receiver >= control.oilLimit) return "oilLimit";
	if (state.dish === "tankLimit" && read.tankTop > control.highLimit - control.hysteresis) return "tankLimit";
	if (state.dish === "oilLimit" && read.receiver > control.oilLimit - control.hysteresis) return "oilLimit";
	return "onSun";
}
