import { airAround, type Tank } from "../tank/tank.ts";
import { type CautionRule, type DayAir, temperature } from "./caution.ts";
import { mayFreeze } from "./may-freeze.ts";

const FREEZING = 273.15; // [K] of water, IAPWS R14-08 (273.1525 K by the open library iapws)

/** Ice in a tank, or in its pipes, which freeze much earlier. */
export const tankFrost: CautionRule<{ readonly plant: { readonly tank: Tank }; readonly air: DayAir }> = ({
	plant: { tank },
	air,
}) => {
	const outdoors = tank.surroundings.kind === "outdoors";
	if (outdoors && air.source === "assumed") return mayFreeze("tank", air);
	const coldest = airAround(tank.surroundings, air.coldest, 0).ambient;
	if (coldest > FREEZING) return [];
	return [
		{
			code: "tankFreezes",
			severity: "danger",
			parameters: { air: temperature(coldest) },
			message:
				"The air around the tank falls to {air}. Vent, relief valve and pipes freeze long before the tank does, and a blocked vent bursts it: house it, or trace-heat its pipes, as a licensed plumber advises.",
		},
	];
};
