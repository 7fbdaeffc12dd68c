import { contradictory, said } from "../validation/rule.ts";
import type { DayRule } from "./day-request.ts";

/** A draw asks for so much water or so much heat. */
export const drawDemand: DayRule = ({ draw }) =>
	draw.draws.flatMap(({ litres, energyKwh }, i) => {
		if ((litres === undefined) !== (energyKwh === undefined)) return [];
		const problem = litres === undefined ? "asks for nothing" : "asks twice";
		return [contradictory(`/draw/draws/${i}`, `the draw ${problem}: give either litres or energyKwh`)];
	});

/** Households are those of a profile. */
export const scaleOfProfile: DayRule = ({ draw }) =>
	draw.scale !== 1 && draw.profile === undefined
		? [
				contradictory(
					"/draw/scale",
					`there is no profile to take ${said(draw.scale)} times: name one, or leave the scale out`,
				),
			]
		: [];

/** Tap water is warmer than the mains. */
export const tapAboveMains: DayRule = ({ draw }) => {
	const mains = draw.mainsTemperatureC;
	const wanted = [
		["/draw/mixedTemperatureC", draw.mixedTemperatureC] as const,
		...draw.draws.map(({ temperatureC }, i) => [`/draw/draws/${i}/temperatureC`, temperatureC] as const),
	];
	return wanted.flatMap(([pointer, temperature]) =>
		temperature !== undefined && temperature <= mains
			? [
					contradictory(
						pointer,
						`${said(temperature)} °C at the tap is not above the mains' ${said(mains)} °C`,
					),
				]
			: [],
	);
};
