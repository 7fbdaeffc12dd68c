import { ICE_POINT } from "../constants.ts";
import type { Fluid } from "../fluids/fluid.ts";
import { boreVolume } from "../loop/bore.ts";
import type { Control, Loop, Pump } from "../loop/loop.ts";
import { type Designed, statedOr } from "./assumption.ts";
import { derived, practice, standard, unconfirmed } from "./grounds.ts";

export interface SparsePump extends Omit<Pump, "casingLossCoefficient"> {
	readonly insulated: boolean; // its casing
	readonly casingLossCoefficient?: number | undefined; // [W/K]
}

export interface SparseControl extends Omit<Control, "highLimit" | "oilLimit"> {
	readonly highLimit?: number | undefined; // of the top of the tank [K]
	readonly oilLimit?: number | undefined; // of the fluid leaving the receiver [K]
}

/** A loop whose limits and expansion vessel follow from fluid, place and content where they are not stated. */
export interface SparseLoop extends Omit<Loop, "pump" | "control" | "expansionVolume"> {
	readonly pump: SparsePump;
	readonly control: SparseControl;
	readonly expansionVolume?: number | undefined; // [m³]
}

/** The plant around a loop, as far as the loop depends on it. */
export interface LoopSurroundings {
	readonly content: number; // of coil and receiver [m³]
	readonly tankBoiling: number; // boiling point of the tank's water at its pressure [K]
	readonly openBoiling: number; // boiling point of water in the open [K]
}

const BARE_CASING = 0.6; // [W/K] of 0.06 m² at 10 W/m²K; common practice, no source
const INSULATED_CASING = 0.2; // [W/K] a third of it; common practice, no source
const EXPANSION = 0.19; // [-] 190 K at 0.00075 per kelvin, mineral oil, and a third more as DIN 4754 has it (from memory)
const LEAST_EXPANSION = 5e-4; // [m³] smallest vessel sold; common practice, no source
const HIGHEST_TANK = 90; // [°C] of the tank's top: common practice, no source
const UNDER_TANK_BOILING = 5; // [K]
const UNDER_OPEN_BOILING = 3; // [K]
const UNDER_BULK = 20; // [K]

export function designLoop(loop: SparseLoop, around: LoopSurroundings): Designed<Loop> {
	const pump = designPump(loop.pump);
	const control = designControl(loop.control, loop.fluid, around);
	const content = boreVolume(loop.supply) + boreVolume(loop.return) + around.content;
	const expansion = statedOr(
		loop.expansionVolume,
		"loop.expansionVolume",
		Math.max(LEAST_EXPANSION, EXPANSION * content),
		unconfirmed(
			standard(
				"19 % of the fluid in pipes, coil and receiver, at least 0.5 L: oil expands by 14 % up to its limit, and a third more for safety",
				"DIN 4754",
			),
		),
	);
	return {
		design: { ...loop, pump: pump.design, control: control.design, expansionVolume: expansion.design },
		assumed: [...pump.assumed, ...control.assumed, ...expansion.assumed],
	};
}

/** Bulk temperature at which the dish turns away from the sun: a margin below the limit of its fluid, in whole degrees Celsius [K]. */
export function bulkLimit(fluid: Fluid): number {
	return Math.round(fluid.limits.bulk.temperature - ICE_POINT) - UNDER_BULK + ICE_POINT;
}

export const bulkLimitGrounds = (fluid: Fluid) => derived(`20 K below the bulk limit of ${fluid.name}`);

function designPump({ insulated, ...pump }: SparsePump): Designed<Pump> {
	const { design: casingLossCoefficient, assumed } = statedOr(
		pump.casingLossCoefficient,
		"loop.pump.casingLossCoefficient",
		insulated ? INSULATED_CASING : BARE_CASING,
		practice(`a fist-sized casing, ${insulated ? "insulated" : "bare"}`),
	);
	return { design: { ...pump, casingLossCoefficient }, assumed };
}

function designControl(control: SparseControl, fluid: Fluid, around: LoopSurroundings): Designed<Control> {
	const high = statedOr(
		control.highLimit,
		"loop.control.highLimit",
		Math.min(HIGHEST_TANK, Math.floor(around.tankBoiling - ICE_POINT) - UNDER_TANK_BOILING) + ICE_POINT,
		derived("5 K below the boiling point of the tank's water, at most 90 °C"),
	);
	const oil = statedOr(control.oilLimit, "loop.control.oilLimit", ...oilLimit(fluid, around.openBoiling));
	return {
		design: { ...control, highLimit: high.design, oilLimit: oil.design },
		assumed: [...high.assumed, ...oil.assumed],
	};
}

function oilLimit(fluid: Fluid, openBoiling: number) {
	const watery = fluid.id === "water" || fluid.id.startsWith("propyleneGlycol");
	if (!watery) return [bulkLimit(fluid), bulkLimitGrounds(fluid)] as const;
	return [
		Math.floor(openBoiling - ICE_POINT) - UNDER_OPEN_BOILING + ICE_POINT,
		derived("3 K below the boiling point of water in the open at this elevation"),
	] as const;
}
