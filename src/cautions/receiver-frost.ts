import { type CautionRule, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

const FREEZING = 273.15; // [K]
const NIGHT_SKY = 5; // [K] below the air that a tube under a clear sky can fall; common practice, no source

/** Frost in a receiver that holds water. */
export const receiverFrost: CautionRule<InstantCircumstances> = ({ outcome, task }) => {
	if (task.arrangement.kind !== "direct") return [];
	const rows = outcome.hours?.rows ?? outcome.levels;
	const coldest = Math.min(...rows.map(({ conditions }) => conditions.ambient));
	if (coldest - NIGHT_SKY > FREEZING) return [];
	return [
		{
			code: "receiverFreezes",
			severity: "danger",
			parameters: { air: temperature(coldest) },
			message:
				"The air falls to {air}, and a tube under a clear night sky is colder still. Ice bursts the receiver and its pipes: drain them every night by a valve that opens by itself, as a licensed plumber advises.",
		},
	];
};
