import { contradictory } from "../validation/rule.ts";
import { instantOf, isoText } from "../wire/time-zone.ts";
import type { DayRule, WarmUpRequest } from "./day-request.ts";
import { runOf } from "./run.ts";

const run = (request: WarmUpRequest) => runOf(request, (_, value) => value);

/** A run ends after it starts. */
export const endAfterStart: DayRule = (request) => {
	const { start, end, zone } = run(request);
	return end > start
		? []
		: [
				contradictory(
					request.endTime === undefined ? "/startTime" : "/endTime",
					`the run would end at ${isoText(end, zone)}, which is not after its start at ${isoText(start, zone)}`,
				),
			];
};

/** Every draw begins within the run. */
export const drawsWithinRun: DayRule = (request) => {
	const { start, end, zone } = run(request);
	if (end <= start) return [];
	return request.draw.draws.flatMap(({ time }, i) => {
		const opens = instantOf(request.date, time, zone);
		return opens >= start && opens < end
			? []
			: [
					contradictory(
						`/draw/draws/${i}/time`,
						`the draw at ${time} is outside the run, from ${isoText(start, zone)} to ${isoText(end, zone)}`,
					),
				];
	});
};
