import { z } from "@hono/zod-openapi";
import { FLUID_IDS, fluidById, practice, type SparseLoop, type Tank } from "../../src/index.ts";
import { contradictory, fourDigits, outOfRange, type Rule } from "../validation/rule.ts";
import { assume, part } from "../wire/defaults.ts";
import {
	celsius,
	fromSi,
	kelvinDifference,
	kilojoulesPerKelvin,
	kilopascals,
	litres,
	litresPerMinute,
	metres,
	optionally,
	ratio,
	toSi,
	watts,
	wattsPerKelvin,
} from "../wire/units.ts";
import { insulation } from "./insulation.ts";
import { corePipe } from "./pipe.ts";
import { tube, tubeWall, wall } from "./tube.ts";

const PipeInsulation = insulation(
	"mineralWool",
	25,
	practice("withstands the heat of oil; about twice as thick as the pipe is wide"),
	300,
).openapi("PipeInsulation", { description: "Insulation around a pipe." });

const Pipe = z
	.strictObject({
		lengthM: assume(
			metres("Length of the pipe.", 0.1, 200),
			4,
			practice("the dish beside the building with the tank"),
		),
		...tube(13, 15, practice("15 mm copper tube, wide enough for cold oil")),
		material: wall("Material of the pipe.", "copper", practice("easy to bend and solder")),
		insulation: part(PipeInsulation),
	})
	.openapi("Pipe", { description: "One run of pipe, with its insulation." });

const Pump = z
	.strictObject({
		flowLPerMin: assume(
			litresPerMinute("Flow rate that the pump is set to. Thick cold oil may reduce it.", 0.05, 100),
			4,
			practice("oil warms by less than 20 K in the receiver of a small dish"),
		),
		powerW: assume(watts("Maximum electric power of the pump.", 1, 2000), 30, practice("a small gear pump")),
		efficiency: assume(
			ratio("Efficiency of the pump: hydraulic power over electric power.", 0.01, 0.9),
			0.3,
			practice("a small gear pump with a direct-current motor"),
		),
		heatToFluid: assume(
			ratio("Share of the pump's electric losses that heats the fluid.", 0, 1),
			0.5,
			practice("gears in the fluid, motor outside it"),
		),
		maximumPressureKpa: assume(
			kilopascals("Maximum pressure rise of the pump.", 1, 2000),
			400,
			practice("a small gear pump"),
		),
		insulated: assume(
			z.boolean().meta({ description: "Whether the pump's casing is insulated." }),
			true,
			practice("a foam shell"),
		),
		casingLossWPerK: wattsPerKelvin(
			"Heat loss coefficient of the pump's casing to the air. If omitted, it follows from whether the casing is insulated.",
			0,
			20,
		).optional(),
		heldHeatKjPerK: assume(
			kilojoulesPerKelvin("Heat capacity of the pump's casing and content.", 0, 100),
			1,
			practice("2 kg of metal"),
		),
	})
	.openapi("Pump", { description: "The pump that circulates the loop's fluid." });

const Control = z
	.strictObject({
		startDifferenceK: assume(
			kelvinDifference(
				"Temperature difference, receiver minus tank sensor, at which the pump starts.",
				0.5,
				50,
			),
			8,
			practice("well above the stop, so that the pump does not cycle"),
		),
		stopDifferenceK: assume(
			kelvinDifference("Temperature difference, receiver minus tank sensor, at which the pump stops.", 0, 49),
			3,
			practice("below it, the heat gained is not worth the pump's power"),
		),
		highLimitC: celsius(
			"Temperature at the top of the tank at which the dish turns away from the sun. If omitted: 5 K below boiling, at most 90 °C.",
			20,
			180,
		).optional(),
		oilLimitC: celsius(
			"Temperature of the fluid leaving the receiver at which the dish turns away from the sun. If omitted: 20 K below the fluid's bulk limit; for a fluid that contains water, 3 K below the boiling point of water in the open.",
			20,
			350,
		).optional(),
		hysteresisK: assume(
			kelvinDifference("Temperature drop below a limit at which the dish turns back to the sun.", 0.5, 50),
			5,
			practice("large enough that the dish does not turn back and forth at the limit"),
		),
	})
	.openapi("Control", {
		description:
			"What starts and stops the pump, and turns the dish away from the sun. The pump follows the two temperatures alone. It also runs without sun, if the receiver is still warm and a draw has cooled the water beside the coil's lowest turn. `takenBackKwh` in the response is the heat that such hours cost.",
	});

export const Loop = z
	.strictObject({
		fluid: assume(
			z.enum(FLUID_IDS).meta({ description: "Heat-transfer fluid of the loop." }),
			"mineralOilVg32",
			practice("stays liquid in frost and does not boil; sold everywhere as hydraulic oil"),
		),
		supply: part(Pipe),
		return: part(Pipe),
		fittingsLossFactor: assume(
			ratio("Flow resistance of bends and valves: the sum of their ζ.", 0, 1000),
			10,
			practice("eight bends and two valves"),
		),
		fittingsLossWPerK: assume(
			wattsPerKelvin("Heat loss coefficient of bare fittings and supports.", 0, 50),
			0.3,
			practice("four unions and two valves under insulation"),
		),
		pump: part(Pump),
		control: part(Control),
		expansionL: litres(
			"Volume available for the fluid to expand into. If omitted: 19 % of the fluid in pipes, coil and receiver, at least 0.5 L.",
			0,
			500,
		).optional(),
	})
	.openapi("Loop", {
		description:
			"The closed circuit between receiver and coil. `supply` is the hot pipe, from receiver to coil.",
	});

export type Loop = z.output<typeof Loop>;

/** The loop for the core, with omitted values left to the design. */
export function sparseLoop(loop: Loop): SparseLoop {
	const { pump, control } = loop;
	return {
		fluid: fluidById(loop.fluid),
		supply: corePipe(loop.supply),
		return: corePipe(loop.return),
		fittingsLossFactor: loop.fittingsLossFactor,
		fittingsLossCoefficient: loop.fittingsLossWPerK,
		pump: {
			flow: toSi.litresPerMinute(pump.flowLPerMin),
			electricPower: pump.powerW,
			efficiency: pump.efficiency,
			heatToFluid: pump.heatToFluid,
			maximumPressure: toSi.kilopascals(pump.maximumPressureKpa),
			insulated: pump.insulated,
			casingLossCoefficient: pump.casingLossWPerK,
			heldHeatCapacity: toSi.kilojoules(pump.heldHeatKjPerK),
		},
		control: {
			startDifference: control.startDifferenceK,
			stopDifference: control.stopDifferenceK,
			highLimit: optionally(toSi.celsius, control.highLimitC),
			oilLimit: optionally(toSi.celsius, control.oilLimitC),
			hysteresis: control.hysteresisK,
		},
		expansionVolume: optionally(toSi.litres, loop.expansionL),
	};
}

interface WithLoop {
	readonly loop: Loop;
}

/** Every pipe is wider outside than inside. */
export const pipeWalls: Rule<WithLoop> = ({ loop }) => [
	...tubeWall("/loop/supply", loop.supply),
	...tubeWall("/loop/return", loop.return),
];

export const startAboveStop: Rule<WithLoop> = ({ loop: { control } }) =>
	control.stopDifferenceK >= control.startDifferenceK
		? [
				contradictory(
					"/loop/control/stopDifferenceK",
					`must be below startDifferenceK (${fourDigits(control.startDifferenceK)} K); ${fourDigits(control.stopDifferenceK)} K is not`,
				),
			]
		: [];

/** The start temperature is below both limits. */
export const limitsAboveStart: Rule<WithLoop, { readonly tank: Tank }> = (
	{ loop: { control } },
	{ tank: { startTemperatures } },
) => {
	const hottest = Math.max(...startTemperatures);
	const limits = [
		["oilLimitC", control.oilLimitC],
		["highLimitC", control.highLimitC],
	] as const;
	return limits.flatMap(([name, limit]) =>
		limit !== undefined && toSi.celsius(limit) <= hottest
			? [
					contradictory(
						`/loop/control/${name}`,
						`must be above the start temperature of the tank (${fourDigits(fromSi.celsius(hottest))} °C); ${fourDigits(limit)} °C is not`,
					),
				]
			: [],
	);
};

/** The fluid's properties are known up to its limit. */
export const oilLimitWithinFluid: Rule<WithLoop> = ({ loop }) => {
	const fluid = fluidById(loop.fluid);
	const hottest = fromSi.celsius(fluid.range[1]);
	const limit = loop.control.oilLimitC;
	return limit !== undefined && limit > hottest
		? [
				outOfRange(
					"/loop/control/oilLimitC",
					`must be at most ${fourDigits(hottest)} °C, where the known properties of ${fluid.name} end; ${fourDigits(limit)} °C is not`,
				),
			]
		: [];
};
