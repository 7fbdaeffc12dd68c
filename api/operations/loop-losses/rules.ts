import { fluidById, INSULATION_MATERIALS } from "../../../src/index.ts";
import { mostMoisture } from "../../parts/insulation.ts";
import { pipeWalls } from "../../parts/loop.ts";
import { contradictory, fourDigits, outOfRange, type Rule, type RuleFault } from "../../validation/rule.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import type { LoopLossesRequest } from "./request.ts";

type LossesRule = Rule<LoopLossesRequest>;

/** The fluid's properties are known at every temperature sent. */
const temperaturesKnown: LossesRule = (request) => {
	const fluid = fluidById(request.loop.fluid);
	const [low, high] = fluid.range;
	const temperatures = [
		["/supplyTemperatureC", request.supplyTemperatureC],
		["/returnTemperatureC", request.returnTemperatureC],
		...(request.coldStartTemperatureC ?? []).map(
			(celsius, i) => [`/coldStartTemperatureC/${i}`, celsius] as const,
		),
	] as const;
	return temperatures.flatMap(([pointer, celsius]) => {
		if (celsius === undefined) return [];
		const kelvin = toSi.celsius(celsius);
		if (kelvin >= low - ROUND_OFF && kelvin <= high + ROUND_OFF) return [];
		const known = `${fourDigits(fromSi.celsius(low))} to ${fourDigits(fromSi.celsius(high))} °C`;
		return [
			outOfRange(pointer, `${fourDigits(celsius)} °C is beyond what is known of ${fluid.name}: ${known}`),
		];
	});
};

const ROUND_OFF = 1e-9; // [K] of the conversion to kelvins and back

/** The receiver warms what comes back. */
const returnBelowSupply: LossesRule = ({ supplyTemperatureC, returnTemperatureC }) =>
	returnTemperatureC !== undefined && returnTemperatureC > supplyTemperatureC
		? [
				contradictory(
					"/returnTemperatureC",
					`the return at ${fourDigits(returnTemperatureC)} °C is hotter than the supply at ${fourDigits(supplyTemperatureC)} °C`,
				),
			]
		: [];

const stepsRise: LossesRule = ({ addedThicknessMm }) =>
	addedThicknessMm.flatMap((added, i) =>
		i > 0 && added <= addedThicknessMm[i - 1]!
			? [contradictory(`/addedThicknessMm/${i}`, "each step must be thicker than the one before")]
			: [],
	);

const WIDEST_TUBE = 0.5; // [-] bore over helix, as far as friction in coils is known

/** A wound tube is thin against its helix. */
const helixWideEnough: LossesRule = ({ furtherTubes }) =>
	furtherTubes.flatMap(({ helixDiameterM, innerDiameterMm }, i) =>
		helixDiameterM !== undefined && toSi.millimetres(innerDiameterMm) > WIDEST_TUBE * helixDiameterM
			? [
					outOfRange(
						`/furtherTubes/${i}/helixDiameterM`,
						`a tube of ${fourDigits(innerDiameterMm)} mm cannot be wound to ${fourDigits(helixDiameterM)} m: the helix must be twice as wide`,
					),
				]
			: [],
	);

/** Lagging holds no more water than its moisture factor was given for, as laid and once wet. */
const moistureKnown: LossesRule = ({ loop, wetMoistFraction }) =>
	(["supply", "return"] as const).flatMap((name): readonly RuleFault[] => {
		const { insulation } = loop[name];
		const most = INSULATION_MATERIALS[insulation.material].mostMoisture;
		return [
			...mostMoisture(`/loop/${name}/insulation`, insulation),
			...(wetMoistFraction > most
				? [
						outOfRange(
							"/wetMoistFraction",
							`${fourDigits(wetMoistFraction)} is more water than is known of ${insulation.material}, on the ${name}: at most ${most}`,
						),
					]
				: []),
		];
	});

/** What a request for a loop's losses must keep to. */
export const LOOP_RULES: readonly LossesRule[] = [
	temperaturesKnown,
	returnBelowSupply,
	pipeWalls,
	helixWideEnough,
	stepsRise,
	moistureKnown,
];
