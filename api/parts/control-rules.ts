import { fluidById } from "../../src/index.ts";
import { contradictory, outOfRange, said } from "../validation/rule.ts";
import { fromSi } from "../wire/units.ts";
import type { DayRule } from "./day-request.ts";

export const startAboveStop: DayRule = ({ loop: { control } }) =>
	control.stopDifferenceK >= control.startDifferenceK
		? [
				contradictory(
					"/loop/control/stopDifferenceK",
					`the pump stops at ${said(control.stopDifferenceK)} K and starts at ${said(control.startDifferenceK)} K; it must start above where it stops`,
				),
			]
		: [];

/** Neither limit is passed before the run begins. */
export const limitsAboveStart: DayRule = ({ loop: { control }, tank, draw }) => {
	const start = tank.startTemperatureC ?? draw.mainsTemperatureC;
	const hottest = Array.isArray(start) ? Math.max(...start) : start;
	const limits = [
		["oilLimitC", control.oilLimitC, "the oil limit"],
		["highLimitC", control.highLimitC, "the tank's high limit"],
	] as const;
	return limits.flatMap(([name, limit, called]) =>
		limit !== undefined && limit <= hottest
			? [
					contradictory(
						`/loop/control/${name}`,
						`${called} of ${said(limit)} °C is not above the start temperature of ${said(hottest)} °C`,
					),
				]
			: [],
	);
};

/** The fluid's properties are known up to its limit. */
export const oilLimitWithinFluid: DayRule = ({ loop }) => {
	const fluid = fluidById(loop.fluid);
	const hottest = fromSi.celsius(fluid.range[1]);
	const limit = loop.control.oilLimitC;
	return limit !== undefined && limit > hottest
		? [
				outOfRange(
					"/loop/control/oilLimitC",
					`${said(limit)} °C is beyond what is known of ${fluid.name}, which ends at ${said(hottest)} °C`,
				),
			]
		: [];
};
