import type { Control } from "../loop/loop.ts";

/** What the controller remembers between steps. */
export interface ControlState {
	readonly pump: "on" | "off";
	readonly dish: "onSun" | "tankLimit" | "oilLimit"; // facing the sun, or turned away by a limit
}

/** What the controller's sensors read [K]. */
export interface Readings {
	readonly receiver: number; // fluid leaving the receiver
	readonly tankSensor: number; // water beside the lowest turn of the coil
	readonly tankTop: number;
}

/** The controller's next state. The pump starts when the receiver stands `startDifference` above the tank's sensor and stops below
 *  `stopDifference`. The dish turns away at a limit and back once that reading is `hysteresis` below it. */
export function controlled(control: Control, state: ControlState, read: Readings): ControlState {
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
