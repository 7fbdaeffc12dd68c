import type { LoopFluxes } from "./coefficients.ts";
import type { LightPath } from "./model.ts";
import type { EnergyBalance } from "./outcome.ts";

/** Running sums of the energy balance [J]: the mutable state of a simulation, changed only here. */
export interface Ledger {
	beam: number;
	pumpHeat: number;
	turnedAway: number;
	blocked: number;
	soiling: number;
	mirror: number;
	spillage: number;
	receiverReflected: number;
	opticsUnresolved: number;
	radiated: number;
	convected: number;
	conducted: number;
	receiverUnresolved: number;
	supplyPipe: number;
	returnPipe: number;
	fittings: number;
	casing: number;
	useful: number;
	toWater: number;
	takenBack: number;
	drawnAboveMains: number;
	tankLoss: number;
	vented: number;
	pumpElectricity: number;
	delivered: number;
	unmet: number;
}

export function emptyLedger(): Ledger {
	return {
		beam: 0,
		pumpHeat: 0,
		turnedAway: 0,
		blocked: 0,
		soiling: 0,
		mirror: 0,
		spillage: 0,
		receiverReflected: 0,
		opticsUnresolved: 0,
		radiated: 0,
		convected: 0,
		conducted: 0,
		receiverUnresolved: 0,
		supplyPipe: 0,
		returnPipe: 0,
		fittings: 0,
		casing: 0,
		useful: 0,
		toWater: 0,
		takenBack: 0,
		drawnAboveMains: 0,
		tankLoss: 0,
		vented: 0,
		pumpElectricity: 0,
		delivered: 0,
		unmet: 0,
	};
}

/** Adds the beam of one step [J]: as turned away, or divided along its path to the absorber. */
export function enterBeam(ledger: Ledger, beam: number, light: LightPath | "turnedAway"): void {
	ledger.beam += beam;
	if (light === "turnedAway") {
		ledger.turnedAway += beam;
		return;
	}
	ledger.blocked += beam * light.blocked;
	ledger.soiling += beam * light.soiling;
	ledger.mirror += beam * light.mirror;
	ledger.spillage += beam * light.spillage;
	ledger.receiverReflected += beam * light.receiverReflected;
	ledger.opticsUnresolved += beam * light.unresolved;
}

/** Adds the heat flows of the loop in a step of `dt` seconds. */
export function enterLoop(ledger: Ledger, fluxes: LoopFluxes, pumpHeat: number, dt: number): void {
	ledger.pumpHeat += pumpHeat * dt;
	ledger.radiated += fluxes.radiated * dt;
	ledger.convected += fluxes.convected * dt;
	ledger.conducted += fluxes.conducted * dt;
	ledger.receiverUnresolved += fluxes.unresolved * dt;
	ledger.supplyPipe += fluxes.supplyPipe * dt;
	ledger.returnPipe += fluxes.returnPipe * dt;
	ledger.fittings += fluxes.fittings * dt;
	ledger.casing += fluxes.casing * dt;
	ledger.useful += fluxes.useful * dt;
	ledger.toWater += fluxes.toWater * dt;
	if (fluxes.toWater < 0) ledger.takenBack -= fluxes.toWater * dt;
}

/** Energy balance with the heat stored in loop and tank since the start [J]; the residual is its closure error. */
export function energyBalance(ledger: Ledger, storedInLoop: number, storedInTank: number): EnergyBalance {
	const optics =
		ledger.blocked +
		ledger.soiling +
		ledger.mirror +
		ledger.spillage +
		ledger.receiverReflected +
		ledger.opticsUnresolved;
	const receiver = ledger.radiated + ledger.convected + ledger.conducted + ledger.receiverUnresolved;
	const loop = ledger.supplyPipe + ledger.returnPipe + ledger.fittings + ledger.casing;
	const loopDefect =
		ledger.beam +
		ledger.pumpHeat -
		(ledger.turnedAway + optics + receiver + loop + storedInLoop + ledger.toWater);
	const tankDefect =
		ledger.toWater - (storedInTank + ledger.drawnAboveMains + ledger.tankLoss + ledger.vented);
	return {
		beam: ledger.beam,
		pumpHeat: ledger.pumpHeat,
		turnedAway: ledger.turnedAway,
		optical: {
			blocked: ledger.blocked,
			soiling: ledger.soiling,
			mirror: ledger.mirror,
			spillage: ledger.spillage,
			receiverReflected: ledger.receiverReflected,
			unresolved: ledger.opticsUnresolved,
		},
		receiver: {
			radiated: ledger.radiated,
			convected: ledger.convected,
			conducted: ledger.conducted,
			unresolved: ledger.receiverUnresolved,
		},
		loop: {
			supplyPipe: ledger.supplyPipe,
			returnPipe: ledger.returnPipe,
			fittings: ledger.fittings,
			pump: ledger.casing,
		},
		storedInLoop,
		toWater: ledger.toWater,
		storedInTank,
		drawnAboveMains: ledger.drawnAboveMains,
		tankLoss: ledger.tankLoss,
		vented: ledger.vented,
		residual: Math.abs(loopDefect) + Math.abs(tankDefect),
		pumpElectricity: ledger.pumpElectricity,
		takenBack: ledger.takenBack,
	};
}
