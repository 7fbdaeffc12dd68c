import { dishCautions, dishOptics, fluidById, standardPressure, tradeMethods } from "../../../src/index.ts";
import { wireCaution } from "../../parts/caution.ts";
import { declinationOn } from "../../parts/declination.ts";
import { coreDish } from "../../parts/dish.ts";
import { coreReceiver } from "../../parts/receiver-design.ts";
import { defaultsTaken, type Fill, filling } from "../../wire/defaults.ts";
import { toSi } from "../../wire/units.ts";
import { operation } from "../operation.ts";
import { type OpticsPlan, wireGeometry, wireLight, wireLimits, wireSpot, wireTrade } from "./answer.ts";
import { DishOpticsRequest } from "./request.ts";
import { DishOpticsResponse } from "./response.ts";
import { requireSoundOptics } from "./rules.ts";
import { wireSeasons } from "./seasons.ts";

export const dishOpticsOperation = operation({
	method: "post",
	path: "/v1/dish/optics",
	operationId: "getDishOptics",
	tag: "Dish",
	summary: "What a dish makes of the beam",
	description: [
		"Geometry of the mirror, size of the focal spot, where the light goes, and the power at the focus. Only the dish's size is needed.",
		"The curve weighs light caught against heat lost over receiver apertures, and names the aperture that nets most at a given oil temperature.",
		"Of an off-axis dish on a polar axis also its aperture through the year.",
	].join("\n"),
	input: DishOpticsRequest,
	output: DishOpticsResponse,
	examples: {
		cooker: {
			summary: "A dish of 1.8 m with a focal length of 0.675 m",
			value: { dish: { diameterM: 1.8, focalLengthM: 0.675 } },
		},
		hotOil: {
			summary: "The aperture that nets most with oil at 180 °C, high up and in wind",
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
			summary: "An off-axis mirror of 8 m² south of the equator, at its midsummer",
			value: {
				dish: { kind: "offsetPolar", mirrorAreaM2: 8 },
				latitude: -23.5,
				date: "2025-12-21",
			},
		},
	},
	maxAge: 0,
	answer: (request, given) => {
		requireSoundOptics(request);
		const { fill, filled } = filling();
		const plan = opticsPlan(request, fill);
		const { dish, receiver, optics, setting } = plan;
		const trade = wireTrade(plan, request.curveApertureDiameterM);
		const compared = trade.curve.apertureDiameterM;
		const extremes = [Math.min(...compared), Math.max(...compared), receiver.apertureDiameter] as const;
		return {
			...wireGeometry(plan),
			...wireLight(plan),
			focalSpot: wireSpot(plan),
			concentrationLimits: wireLimits(dish),
			...trade,
			...(dish.kind === "offsetPolar" && {
				seasons: wireSeasons(dish, toSi.degrees(request.latitude!), request.date),
			}),
			cautions: dishCautions(optics.apertureArea).map(wireCaution),
			assumed: [...defaultsTaken(DishOpticsRequest, given, request), ...filled],
			methods: [...tradeMethods(dish, receiver, setting, extremes)],
		};
	},
});

function opticsPlan(request: DishOpticsRequest, fill: Fill): OpticsPlan {
	const dish = coreDish(request.dish, fill);
	const receiver = coreReceiver(
		request.receiver,
		dish,
		fluidById(request.fluid),
		request.elevationM,
		fill,
	) as OpticsPlan["receiver"]; // the rules have refused an efficiency line
	const latitude = toSi.degrees(request.latitude ?? 0);
	const sun = declinationOn(request.date);
	const optics = dishOptics(dish, receiver.apertureDiameter, latitude, sun);
	const beam = request.beamIrradianceWPerM2;
	return {
		dish,
		receiver,
		optics,
		beam,
		setting: {
			power: beam * optics.apertureArea,
			fluidTemperature: toSi.celsius(request.oilTemperatureC),
			ambient: toSi.celsius(request.ambientC),
			wind: request.windMPerS,
			pressure: standardPressure(request.elevationM),
			altitude: toSi.degrees(request.sunAltitudeDeg),
		},
	};
}
