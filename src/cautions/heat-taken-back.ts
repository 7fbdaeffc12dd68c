import type { CautionRule } from "./caution.ts";

const MUCH = 0.01; // of the heat brought; our choice

/** A pump that runs on while the loop takes heat out of the water. */
export const heatTakenBack: CautionRule = ({ outcome: { balance } }) => {
	const { takenBack, toWater } = balance;
	if (takenBack <= MUCH * (toWater + takenBack)) return [];
	return [
		{
			code: "heatTakenBack",
			severity: "info",
			parameters: { takenBack: { kind: "energy", value: takenBack } },
			message:
				"The loop takes {takenBack} out of the water again: after a draw, or with the dish off the sun, its controller sees only that the receiver is warmer than the coldest water, and lets the pump run. One that also heeds the sun keeps that heat; a licensed electrician can fit it.",
		},
	];
};
