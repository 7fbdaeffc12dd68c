import { z } from "@hono/zod-openapi";
import type { EnergyBalance as CoreEnergyBalance } from "../../../src/index.ts";
import { fromSi, kilowattHours } from "../../wire/units.ts";

export const EnergyBalance = z
	.strictObject({
		beamOnApertureKwh: kilowattHours("Beam on the aperture, counted as if it always faced the sun."),
		pumpHeatToOilKwh: kilowattHours("Heat added to the fluid by the pump."),
		turnedAwayKwh: kilowattHours(
			"Beam not collected because the dish was turned away, at a temperature limit or with the sun below its lowest altitude.",
		),
		optical: z.strictObject({
			blockedKwh: kilowattHours("Beam blocked by receiver, arms and ribs."),
			soilingKwh: kilowattHours("Beam lost to dust on the mirror."),
			mirrorKwh: kilowattHours("Beam absorbed or scattered by the clean mirror."),
			spillageKwh: kilowattHours("Reflected beam that misses the receiver's aperture."),
			receiverReflectedKwh: kilowattHours("Beam reflected by the absorber and its cover."),
			unresolvedKwh: kilowattHours(
				"Optical loss of a receiver described by an efficiency line, which does not split it by path.",
			),
		}),
		receiver: z.strictObject({
			radiatedKwh: kilowattHours("Heat lost by the receiver through thermal radiation."),
			convectedKwh: kilowattHours("Heat lost by the receiver through convection to air and wind."),
			conductedKwh: kilowattHours("Heat lost by the receiver through its insulation."),
			unresolvedKwh: kilowattHours(
				"Heat loss of a receiver described by an efficiency line, which does not split it by path.",
			),
		}),
		loop: z.strictObject({
			supplyPipeKwh: kilowattHours("Heat lost by the supply pipe, from receiver to coil."),
			returnPipeKwh: kilowattHours("Heat lost by the return pipe, from coil to receiver."),
			fittingsKwh: kilowattHours("Heat lost by the loop's fittings and supports."),
			pumpKwh: kilowattHours("Heat lost by the pump's casing."),
		}),
		storedInLoopKwh: kilowattHours(
			"Change in the heat stored in the loop's fluid and metal, end minus start.",
		),
		toWaterKwh: kilowattHours("Heat delivered through the coil to the water."),
		storedInTankKwh: kilowattHours(
			"Change in the heat stored in the tank's water and wall, end minus start.",
		),
		drawnAboveMainsKwh: kilowattHours("Heat drawn from the tank at the taps, above the mains temperature."),
		tankLossKwh: kilowattHours("Heat lost through the tank's insulation and fittings."),
		ventedKwh: kilowattHours("Heat that left the tank as steam."),
		residualKwh: kilowattHours(
			"Closing error: the sum of the defects of both balances, rounded to 1e-12 kWh. Smaller values are rounding noise.",
		),
		pumpElectricityKwh: kilowattHours("Electricity used by the pump. Not a term of the balance."),
		takenBackKwh: kilowattHours(
			"Heat removed from the water by the loop while its fluid was cooler than the water: towards evening, through long cold pipes, or while the pump ran with the dish turned away. Already subtracted in `toWaterKwh`; not a term of the balance.",
		),
	})
	.openapi("EnergyBalance", {
		description:
			"Energy balance of loop and tank; each term is integrated from its own flux. Loop: beamOnAperture + pumpHeatToOil = turnedAway + optical + receiver + loop + storedInLoop + toWater. Tank: toWater = storedInTank + drawnAboveMains + tankLoss + vented. A loss is negative where warmer air heats a colder part. toWater is negative where the loop removes more heat from the water than it delivers.",
	});

export function wireBalance(balance: CoreEnergyBalance): z.input<typeof EnergyBalance> {
	const kwh = fromSi.kilowattHours;
	const { optical, receiver, loop } = balance;
	return {
		beamOnApertureKwh: kwh(balance.beam),
		pumpHeatToOilKwh: kwh(balance.pumpHeat),
		turnedAwayKwh: kwh(balance.turnedAway),
		optical: {
			blockedKwh: kwh(optical.blocked),
			soilingKwh: kwh(optical.soiling),
			mirrorKwh: kwh(optical.mirror),
			spillageKwh: kwh(optical.spillage),
			receiverReflectedKwh: kwh(optical.receiverReflected),
			unresolvedKwh: kwh(optical.unresolved),
		},
		receiver: {
			radiatedKwh: kwh(receiver.radiated),
			convectedKwh: kwh(receiver.convected),
			conductedKwh: kwh(receiver.conducted),
			unresolvedKwh: kwh(receiver.unresolved),
		},
		loop: {
			supplyPipeKwh: kwh(loop.supplyPipe),
			returnPipeKwh: kwh(loop.returnPipe),
			fittingsKwh: kwh(loop.fittings),
			pumpKwh: kwh(loop.pump),
		},
		storedInLoopKwh: kwh(balance.storedInLoop),
		toWaterKwh: kwh(balance.toWater),
		storedInTankKwh: kwh(balance.storedInTank),
		drawnAboveMainsKwh: kwh(balance.drawnAboveMains),
		tankLossKwh: kwh(balance.tankLoss),
		ventedKwh: kwh(balance.vented),
		residualKwh: Math.round(kwh(balance.residual) * 1e12) / 1e12, // finer digits differ from one engine to the next
		pumpElectricityKwh: kwh(balance.pumpElectricity),
		takenBackKwh: kwh(balance.takenBack),
	};
}
