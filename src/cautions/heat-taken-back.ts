import type { CautionRule } from "./caution.ts";

const MUCH = 0.01; // of the heat to the water; our choice

/** A pump that keeps running while the loop cools the water. */
export const heatTakenBack: CautionRule = ({ outcome: { balance } }) => {
	const { takenBack, toWater } = balance;
	if (takenBack <= MUCH * (toWater + takenBack)) return [];
	return [
		{
			code: "heatTakenBack",
			severity: "info",
			parameters: { takenBack: { kind: "energy", value: takenBack } },
			message:
				"The loop takes {takenBack} back out of the water: after a draw, or with the dish off the sun, its controller detects only that the receiver is warmer than the coldest water, and lets the pump run. A controller that also measures the sun keeps that heat; a licensed electrician can fit it.",
		},
	];
};
