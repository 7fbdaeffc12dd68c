import { z } from "@hono/zod-openapi";
import type { EnergyBalance as CoreEnergyBalance } from "../../../src/index.ts";
import { fromSi, kilowattHours } from "../../wire/units.ts";

export const EnergyBalance = z
	.strictObject({
		beamOnApertureKwh: kilowattHours("Beam on the aperture that faces the sun, or could."),
		pumpHeatToOilKwh: kilowattHours("From the pump into the fluid."),
		turnedAwayKwh: kilowattHours("Beam refused: dish off the sun, at a limit or below its lowest altitude."),
		optical: z.strictObject({
			blockedKwh: kilowattHours("Shaded by receiver, arms and ribs."),
			soilingKwh: kilowattHours("Taken by dust on the mirror."),
			mirrorKwh: kilowattHours("Taken by the clean mirror."),
			spillageKwh: kilowattHours("Past the receiver's aperture."),
			receiverReflectedKwh: kilowattHours("Thrown back by absorber and cover."),
			unresolvedKwh: kilowattHours("Optical loss of an efficiency line, not split."),
		}),
		receiver: z.strictObject({
			radiatedKwh: kilowattHours("As heat radiation."),
			convectedKwh: kilowattHours("To air and wind."),
			conductedKwh: kilowattHours("Through its lagging."),
			unresolvedKwh: kilowattHours("Heat loss of an efficiency line, not split."),
		}),
		loop: z.strictObject({
			supplyPipeKwh: kilowattHours("Hot pipe, receiver to coil."),
			returnPipeKwh: kilowattHours("Return pipe, coil to receiver."),
			fittingsKwh: kilowattHours("Fittings and supports."),
			pumpKwh: kilowattHours("Casing of the pump."),
		}),
		storedInLoopKwh: kilowattHours("Held by fluid and metal of the loop, end less start."),
		toWaterKwh: kilowattHours("Through the coil into the water."),
		storedInTankKwh: kilowattHours("Held by water and wall of the tank, end less start."),
		drawnAboveMainsKwh: kilowattHours("Drawn at the taps, above the mains."),
		tankLossKwh: kilowattHours("Through the tank's lagging and fittings."),
		ventedKwh: kilowattHours("Boiled off."),
		residualKwh: kilowattHours(
			"What does not close: the sum of both balances' defects, to the nearest 1e-12 kWh. Below that it is the arithmetic's own noise.",
		),
		pumpElectricityKwh: kilowattHours("Drawn by the pump; stands beside the balance."),
		takenBackKwh: kilowattHours(
			"Heat that the loop took out of the water again while its fluid was the cooler: towards evening, through long cold pipes, or while a limit kept the dish away and the pump ran on. `toWaterKwh` is already less it; it stands beside the balance.",
		),
	})
	.openapi("EnergyBalance", {
		description:
			"Where every kilowatt-hour went, each term integrated from its own flux. Loop: beamOnAperture + pumpHeatToOil = turnedAway + optical + receiver + loop + storedInLoop + toWater. Tank: toWater = storedInTank + drawnAboveMains + tankLoss + vented. A loss is negative where warmer air heats what is colder; toWater, where the loop takes more out of the water than it brings.",
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
