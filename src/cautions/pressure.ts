import type { CautionRule, StandingTank } from "./caution.ts";

/** A closed tank bursts; an open one must stay open. */
export const pressure: CautionRule<StandingTank> = ({ plant: { tank } }) =>
	tank.reliefPressure > 0
		? [
				{
					code: "closedTank",
					severity: "danger",
					parameters: { reliefPressure: { kind: "pressure", value: tank.reliefPressure } },
					message:
						"A closed tank can burst. Never heat one without a listed temperature-and-pressure relief valve, set here to {reliefPressure}, with no valve between it and the tank and its outlet led to a safe place; fitted by a licensed plumber to your local code.",
				},
			]
		: [
				{
					code: "openVent",
					severity: "warning",
					parameters: {},
					message:
						"A vented tank is safe only while its vent is open. Keep it free of ice, scale and valves, as your local code requires.",
				},
			];
