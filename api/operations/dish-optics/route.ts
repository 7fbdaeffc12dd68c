import { dishCautions, tradeMethods } from "../../../src/index.ts";
import { dishOf } from "../../parts/dish.ts";
import { operation } from "../operation.ts";
import { tradeOf, wireGeometry, wireLight, wireLimits, wireSpot, wireTrade } from "./answer.ts";
import { opticsPlan } from "./plan.ts";
import { DishOpticsRequest } from "./request.ts";
import { DishOpticsResponse } from "./response.ts";
import { OPTICS_RULES } from "./rules.ts";
import { wireSeasons } from "./seasons.ts";

export const dishOpticsOperation = operation({
	method: "post",
	path: "/v1/dish/optics",
	operationId: "getDishOptics",
	tag: "Dish",
	summary: "Optical performance of a dish",
	description: [
		"Computes the mirror geometry, the size of the focal spot, the optical losses and the power at the focus. Only the size of the dish is required.",
		"The curve weighs light caught against heat lost over receiver apertures. `bestAperture` has the greatest net power at the given oil temperature.",
		"For an off-axis dish on a polar axis, the response includes its aperture through the year.",
	].join("\n"),
	input: DishOpticsRequest,
	output: DishOpticsResponse,
	examples: {
		cooker: {
			summary: "1.8 m dish with a focal length of 0.675 m",
			value: { dish: { diameterM: 1.8, focalLengthM: 0.675 } },
		},
		hotOil: {
			summary: "Best aperture with oil at 180 °C, at high elevation and in wind",
			value: {
				dish: { diameterM: 2.4, rimAngleDeg: 50, slopeErrorMrad: 3, reflectance: 0.93 },
				receiver: { kind: "cavity", apertureDiameterM: 0.16 },
				oilTemperatureC: 180,
				ambientC: 8,
				elevationM: 2350,
				windMPerS: 4,
				curveApertureDiameterM: [0.04, 0.06, 0.08, 0.1, 0.12, 0.16, 0.2],
			},
		},
		offsetPolar: {
			summary: "8 m² off-axis mirror south of the equator, at midsummer",
			value: {
				dish: { kind: "offsetPolar", mirrorAreaM2: 8 },
				latitude: -23.5,
				date: "2025-12-21",
			},
		},
	},
	maxAge: 0,
	cost: 5,
	designs: ({ dish }) => ({ dish: dishOf(dish) }),
	rules: OPTICS_RULES,
	plan: opticsPlan,
	outcome: tradeOf,
	answer: (plan, trade, { date }) => ({
		...wireGeometry(plan),
		...wireLight(plan),
		focalSpot: wireSpot(plan),
		concentrationLimits: wireLimits(plan.dish),
		...wireTrade(trade),
		...(plan.dish.kind === "offsetPolar" && {
			seasons: wireSeasons(plan.dish, plan.latitude, date),
		}),
	}),
	cautions: ({ optics }) => dishCautions(optics.apertureArea),
	methods: ({ dish, receiver, setting }, { curve }) => {
		const widths = curve.map(({ diameter }) => diameter);
		const extremes = [Math.min(...widths), Math.max(...widths), receiver.apertureDiameter] as const;
		return tradeMethods(dish, receiver, setting, extremes);
	},
});
