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
	practice("stands the heat of oil, and about as thick as the pipe is wide twice over"),
	300,
).openapi("PipeInsulation", { description: "Lagging around a pipe." });

const Pipe = z
	.strictObject({
		lengthM: assume(metres("From end to end.", 0.1, 200), 4, practice("dish beside the tank's house")),
		...tube(13, 15, practice("15 mm copper tube, wide enough for cold oil")),
		material: wall("What the pipe is made of.", "copper", practice("bends and solders easily")),
		insulation: part(PipeInsulation),
	})
	.openapi("Pipe", { description: "One run of pipe, with its lagging." });

const Pump = z
	.strictObject({
		flowLPerMin: assume(
			litresPerMinute("What it is set to. Thick cold oil may keep it from that.", 0.05, 100),
			4,
			practice("keeps oil under 20 K of rise at the receiver of a small dish"),
		),
		powerW: assume(
			watts("Electric power that it draws, at most.", 1, 2000),
			30,
			practice("a small gear pump"),
		),
		efficiency: assume(
			ratio("Hydraulic power over electric.", 0.01, 0.9),
			0.3,
			practice("a small gear pump with a direct-current motor"),
		),
		heatToFluid: assume(
			ratio("Share of its electric losses that ends in the fluid.", 0, 1),
			0.5,
			practice("wetted gears, motor outside"),
		),
		maximumPressureKpa: assume(
			kilopascals("Most that it can raise.", 1, 2000),
			400,
			practice("a small gear pump"),
		),
		insulated: assume(
			z.boolean().meta({ description: "Whether its casing is lagged." }),
			true,
			practice("a foam shell"),
		),
		casingLossWPerK: wattsPerKelvin(
			"Heat loss of the casing to the air. Left out, it follows from whether the casing is lagged.",
			0,
			20,
		).optional(),
		heldHeatKjPerK: assume(
			kilojoulesPerKelvin("Heat that casing and content hold.", 0, 100),
			1,
			practice("2 kg of metal"),
		),
	})
	.openapi("Pump");

const Control = z
	.strictObject({
		startDifferenceK: assume(
			kelvinDifference("Receiver over the tank's sensor at which the pump starts.", 0.5, 50),
			8,
			practice("well above the stop, so that it does not hunt"),
		),
		stopDifferenceK: assume(
			kelvinDifference("And at which it stops.", 0, 49),
			3,
			practice("what is left is not worth the pump"),
		),
		highLimitC: celsius(
			"Temperature of the tank's top at which the dish turns away. Left out: 5 K below boiling, at most 90 °C.",
			20,
			180,
		).optional(),
		oilLimitC: celsius(
			"Temperature of the fluid leaving the receiver at which the dish turns away. Left out: 20 K below the fluid's limit in bulk; where the fluid holds water, 3 K below its boiling in the open.",
			20,
			350,
		).optional(),
		hysteresisK: assume(
			kelvinDifference("How far below a limit the dish turns back to the sun.", 0.5, 50),
			5,
			practice("far enough that the dish does not turn to and fro about the limit"),
		),
	})
	.openapi("Control", {
		description:
			"What starts and stops the pump, and what turns the dish away. The pump heeds the two temperatures alone: it also runs while no sun is on the receiver, if that is still warm and the water beside the coil's lowest turn has been cooled by a draw. `takenBackKwh` in the answer tells what such hours cost.",
	});

export const Loop = z
	.strictObject({
		fluid: assume(
			z.enum(FLUID_IDS).meta({ description: "What carries the heat." }),
			"mineralOilVg32",
			practice("stays liquid in frost and does not boil; sold everywhere as hydraulic oil"),
		),
		supply: part(Pipe),
		return: part(Pipe),
		fittingsLossFactor: assume(
			ratio("Flow resistance of bends and valves: sum of their ζ.", 0, 1000),
			10,
			practice("eight bends and two valves"),
		),
		fittingsLossWPerK: assume(
			wattsPerKelvin("Heat loss of bare fittings and supports.", 0, 50),
			0.3,
			practice("four unions and two valves under lagging"),
		),
		pump: part(Pump),
		control: part(Control),
		expansionL: litres(
			"Room for the fluid to expand. Left out: 19 % of the fluid in pipes, coil and receiver, at least 0.5 L.",
			0,
			500,
		).optional(),
	})
	.openapi("Loop", {
		description: "The closed circuit between receiver and coil. `supply` runs hot, from receiver to coil.",
	});

export type Loop = z.output<typeof Loop>;

/** The loop as the core takes it, what the request leaves out still open. */
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
					`the pump stops at ${fourDigits(control.stopDifferenceK)} K and starts at ${fourDigits(control.startDifferenceK)} K; it must start above where it stops`,
				),
			]
		: [];

/** Neither limit is passed before the run begins. */
export const limitsAboveStart: Rule<WithLoop, { readonly tank: Tank }> = (
	{ loop: { control } },
	{ tank: { startTemperatures } },
) => {
	const hottest = Math.max(...startTemperatures);
	const limits = [
		["oilLimitC", control.oilLimitC, "the oil limit"],
		["highLimitC", control.highLimitC, "the tank's high limit"],
	] as const;
	return limits.flatMap(([name, limit, called]) =>
		limit !== undefined && toSi.celsius(limit) <= hottest
			? [
					contradictory(
						`/loop/control/${name}`,
						`${called} of ${fourDigits(limit)} °C is not above the start temperature of ${fourDigits(fromSi.celsius(hottest))} °C`,
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
					`${fourDigits(limit)} °C is beyond what is known of ${fluid.name}, which ends at ${fourDigits(hottest)} °C`,
				),
			]
		: [];
};
