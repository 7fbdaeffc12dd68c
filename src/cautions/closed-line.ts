import type { CautionRule } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

/** A heated line closed by a check valve and a tap. */
export const closedLine: CautionRule<InstantCircumstances> = () => [
	{
		code: "closedLine",
		severity: "danger",
		parameters: {},
		message:
			"Water heated between a closed tap and a check valve bursts its pipe. The line needs a listed temperature-and-pressure relief valve on the heated side, no valve between, its outlet led to a safe place; fitted by a licensed plumber to your local code.",
	},
];
