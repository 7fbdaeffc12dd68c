import type { CautionRule } from "./caution.ts";

/** Concentrated light. */
export const concentratedLight: CautionRule<unknown> = () => [
	{
		code: "concentratedLight",
		severity: "danger",
		parameters: {},
		message:
			"Concentrated sunlight blinds, burns skin and lights fires at once, also beside the receiver and while the dish moves. Cover the dish or turn it away before any work, wear rated eye protection, keep people and all that burns out of the beam, and park it where the sun cannot find the focus; follow the local rules for work with strong light.",
	},
];
