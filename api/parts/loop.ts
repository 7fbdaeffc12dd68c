import { z } from "@hono/zod-openapi";
import {
	boreVolume,
	type Loop as CoreLoop,
	derived,
	FLUID_IDS,
	type Fluid,
	fluidById,
	practice,
	standard,
	unconfirmed,
} from "../../src/index.ts";
import { assume, type Fill, part } from "../wire/defaults.ts";
import {
	celsius,
	fromSi,
	kelvinDifference,
	kilojoulesPerKelvin,
	kilopascals,
	litres,
	litresPerMinute,
	metres,
	ratio,
	toSi,
	watts,
	wattsPerKelvin,
} from "../wire/units.ts";
import { insulation } from "./insulation.ts";
import { corePipe } from "./pipe.ts";
import { tube, wall } from "./tube.ts";

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

const BARE_CASING = 0.6; // [W/K] of 0.06 m² at 10 W/m²K; common practice, no source
const LAGGED_CASING = 0.2; // [W/K] a third of it; common practice, no source
const EXPANSION = 0.19; // [-] 190 K at 0.00075 per kelvin, mineral oil, and a third more as DIN 4754 has it (from memory)
const LEAST_EXPANSION = 0.5; // [L] smallest vessel sold; common practice, no source

/** @param elsewhere     content of coil and receiver [m³]
 *  @param boilingPoint  of the tank's water at its pressure [K]     @param openBoiling  of water in the open [K] */
export function coreLoop(
	loop: Loop,
	elsewhere: number,
	boilingPoint: number,
	openBoiling: number,
	fill: Fill,
): CoreLoop {
	const fluid = fluidById(loop.fluid);
	const supply = corePipe(loop.supply);
	const back = corePipe(loop.return);
	return {
		fluid,
		supply,
		return: back,
		fittingsLossFactor: loop.fittingsLossFactor,
		fittingsLossCoefficient: loop.fittingsLossWPerK,
		pump: corePump(loop.pump, fill),
		control: {
			startDifference: loop.control.startDifferenceK,
			stopDifference: loop.control.stopDifferenceK,
			highLimit: toSi.celsius(loop.control.highLimitC ?? highLimit(boilingPoint, fill)),
			oilLimit: toSi.celsius(loop.control.oilLimitC ?? oilLimit(fluid, openBoiling, fill)),
			hysteresis: loop.control.hysteresisK,
		},
		expansionVolume: toSi.litres(
			loop.expansionL ?? expansion(boreVolume(supply) + boreVolume(back) + elsewhere, fill),
		),
	};
}

function corePump(pump: Loop["pump"], fill: Fill): CoreLoop["pump"] {
	const casing = pump.insulated ? LAGGED_CASING : BARE_CASING;
	return {
		flow: toSi.litresPerMinute(pump.flowLPerMin),
		electricPower: pump.powerW,
		efficiency: pump.efficiency,
		heatToFluid: pump.heatToFluid,
		maximumPressure: toSi.kilopascals(pump.maximumPressureKpa),
		casingLossCoefficient:
			pump.casingLossWPerK ??
			fill(
				"/loop/pump/casingLossWPerK",
				casing,
				practice(`a fist-sized casing, ${pump.insulated ? "lagged" : "bare"}`),
			),
		heldHeatCapacity: toSi.kilojoules(pump.heldHeatKjPerK),
	};
}

function highLimit(boilingPoint: number, fill: Fill): number {
	return fill(
		"/loop/control/highLimitC",
		Math.min(90, Math.floor(fromSi.celsius(boilingPoint)) - 5),
		derived("5 K below the boiling point of the tank's water, at most 90 °C"),
	);
}

function oilLimit(fluid: Fluid, openBoiling: number, fill: Fill): number {
	const watery = fluid.id === "water" || fluid.id.startsWith("propyleneGlycol");
	return watery
		? fill(
				"/loop/control/oilLimitC",
				Math.floor(fromSi.celsius(openBoiling)) - 3,
				derived("3 K below the boiling point of water in the open at this elevation"),
			)
		: fill(
				"/loop/control/oilLimitC",
				Math.round(fromSi.celsius(fluid.limits.bulk.temperature)) - 20,
				derived(`20 K below the limit of ${fluid.name} in bulk`),
			);
}

function expansion(volume: number, fill: Fill): number {
	return fill(
		"/loop/expansionL",
		Math.max(LEAST_EXPANSION, EXPANSION * fromSi.litres(volume)),
		unconfirmed(
			standard(
				"19 % of the fluid in pipes, coil and receiver, at least 0.5 L: oil swells by 14 % on its way to its limit, and a third more for safety",
				"DIN 4754",
			),
		),
	);
}
