import { ICE_POINT } from "../constants.ts";
import { insulationMethod } from "../heat/methods.ts";
import type { Method } from "../methods.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { facingDiscOutsideRange } from "./facing-disc.ts";
import { gapOutsideRange } from "./glazed-coil.ts";
import { type CavityReceiver, hasTube, type Receiver, type TubeReceiver } from "./receiver.ts";

const CAVITY_DATA = [400 + ICE_POINT, 700 + ICE_POINT] as const; // [K] wall temperatures measured by Stine & McDonald (value from memory)
const WIDEST_OPENING = 1; // [-] aperture over average inner dimension, Stine & McDonald
const STRONGEST_WIND = 9; // [m/s] greatest wind measured by Ma (value from memory)

/** Methods behind the losses of a receiver, each with a flag where one of its states is outside the range.
 *  @param states  one or more, including the extreme ones */
export function receiverMethods(
	receiver: Receiver,
	states: readonly [ReceiverConditions, ...ReceiverConditions[]],
): readonly Method[] {
	return outsideRangeInAny(states.map((state) => methodsAt(receiver, state)));
}

/** The same methods in several states, each with a flag where one of the states is outside its range. */
export function outsideRangeInAny(each: readonly (readonly Method[])[]): readonly Method[] {
	return each[0]!.map((method, i) => ({
		...method,
		outsideRange: each.some((methods) => methods[i]!.outsideRange),
	}));
}

function methodsAt(receiver: Receiver, state: ReceiverConditions): readonly Method[] {
	if (!hasTube(receiver))
		return [
			{ name: "Receiver: measured efficiency line of the request", confirmed: true, outsideRange: false },
		];
	return [
		...faceMethods(receiver, state),
		insulationMethod("Receiver", receiver.insulation, state.wallTemperature, state.ambient),
	];
}

function faceMethods(receiver: TubeReceiver, state: ReceiverConditions): readonly Method[] {
	switch (receiver.kind) {
		case "cavity":
			return cavityMethods(receiver, state);
		case "openCoil":
			return [discMethod(receiver, state)];
		case "glazedCoil":
			return [
				discMethod(receiver, state),
				{
					name: "Receiver: air between coil and cover",
					source: "ElSherbiny, Raithby & Hollands 1982; Arnold, Catton & Edwards 1976",
					confirmed: false,
					outsideRange: gapOutsideRange(receiver, state),
				},
			];
		default:
			return receiver satisfies never;
	}
}

function cavityMethods(receiver: CavityReceiver, state: ReceiverConditions): readonly Method[] {
	const wall = state.wallTemperature;
	const openness = (2 * receiver.apertureDiameter) / (receiver.innerDiameter + receiver.depth);
	return [
		{
			name: "Receiver: free convection from the cavity",
			source: "Stine & McDonald, ISES Solar World Congress, Kobe 1989",
			confirmed: false,
			outsideRange: !(wall >= CAVITY_DATA[0] && wall <= CAVITY_DATA[1] && openness <= WIDEST_OPENING),
		},
		{
			name: "Receiver: wind at the cavity",
			source: "Ma, SAND92-7293, 1993",
			confirmed: false,
			outsideRange: !(state.wind <= STRONGEST_WIND),
		},
	];
}

function discMethod(receiver: TubeReceiver, state: ReceiverConditions): Method {
	return {
		name: "Receiver: wind and buoyancy on the face",
		source:
			"Incropera & DeWitt 6e, eq. 7.30; Churchill & Chu 1975; McAdams 1954; cubes added after Churchill 1977",
		confirmed: true,
		outsideRange: facingDiscOutsideRange(receiver.apertureDiameter, state),
	};
}
