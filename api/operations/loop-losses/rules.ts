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
		["supplyTemperatureC", request.supplyTemperatureC],
		["returnTemperatureC", request.returnTemperatureC],
		...(request.coldStartTemperatureC ?? []).map(
			(celsius, i) => [`coldStartTemperatureC/${i}`, celsius] as const,
		),
	] as const;
	return temperatures.flatMap(([name, celsius]) => {
		if (celsius === undefined) return [];
		const kelvin = toSi.celsius(celsius);
		if (kelvin >= low - ROUND_OFF && kelvin <= high + ROUND_OFF) return [];
		const known = `${fourDigits(fromSi.celsius(low))} to ${fourDigits(fromSi.celsius(high))} °C`;
		return [
			outOfRange(
				`/${name}`,
				`${name} of ${fourDigits(celsius)} °C is outside the known range of ${fluid.name}; send ${known}`,
			),
		];
	});
};

const ROUND_OFF = 1e-9; // [K] of the conversion to kelvins and back

/** The receiver warms the returning fluid. */
const returnBelowSupply: LossesRule = ({ supplyTemperatureC, returnTemperatureC }) =>
	returnTemperatureC !== undefined && returnTemperatureC > supplyTemperatureC
		? [
				contradictory(
					"/returnTemperatureC",
					`returnTemperatureC of ${fourDigits(returnTemperatureC)} °C is above supplyTemperatureC of ${fourDigits(supplyTemperatureC)} °C; send a return that is not hotter`,
				),
			]
		: [];

const stepsRise: LossesRule = ({ addedThicknessMm }) =>
	addedThicknessMm.flatMap((added, i) =>
		i > 0 && added <= addedThicknessMm[i - 1]!
			? [
					contradictory(
						`/addedThicknessMm/${i}`,
						"addedThicknessMm does not rise here; send each thickness greater than the one before",
					),
				]
			: [],
	);

const WIDEST_TUBE = 0.5; // [-] inner diameter over helix diameter, limit of the friction data for coils

/** A wound tube is thin against its helix. */
const helixWideEnough: LossesRule = ({ furtherTubes }) =>
	furtherTubes.flatMap(({ helixDiameterM, innerDiameterMm }, i) =>
		helixDiameterM !== undefined && toSi.millimetres(innerDiameterMm) > WIDEST_TUBE * helixDiameterM
			? [
					outOfRange(
						`/furtherTubes/${i}/helixDiameterM`,
						`helixDiameterM of ${fourDigits(helixDiameterM)} m is too small for a tube of ${fourDigits(innerDiameterMm)} mm; send at least twice the inner diameter`,
					),
				]
			: [],
	);

/** Insulation holds no more water than its moisture factor covers, both now and after rain. */
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
							`wetMoistFraction of ${fourDigits(wetMoistFraction)} is above the known range of ${insulation.material} on the ${name}; send at most ${most}`,
						),
					]
				: []),
		];
	});

/** Rules of a loop-losses request. */
export const LOOP_RULES: readonly LossesRule[] = [
	temperaturesKnown,
	returnBelowSupply,
	pipeWalls,
	helixWideEnough,
	stepsRise,
	moistureKnown,
];
