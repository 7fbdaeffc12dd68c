import { GRAVITY } from "../constants.ts";
import { requireWithin } from "../errors.ts";
import { type Air, air } from "../fluids/air.ts";
import { radiativeCoefficient } from "../heat/radiation.ts";
import { cube, power } from "../numeric/power.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { facingDiscCoefficient } from "./facing-disc.ts";
import { insulatedShell, insulationLoss } from "./insulation-loss.ts";
import type { ReceiverLosses } from "./loss-paths.ts";
import type { GlazedCoilReceiver } from "./receiver.ts";

const GLASS_EMITTANCE = 0.88; // [-] ± 0.04, window glass, Duffie & Beckman (value from memory)
const LEAST_ASPECT = 5; // [-] of the gap, ElSherbiny et al. 1982 (value from memory)
const MOST_ASPECT = 110; // [-] idem
const MOST_RAYLEIGH = 1e7; // [-] idem
const FIRST_SHARE = 0.35; // of the temperature difference outside the pane, first guess; common practice, no source
const PASSES = 3; // enough for 0.2 % of the converged loss (tests/unit/receiver/coils.test.ts)

/** Nusselt number of the air between a hot plate and a pane below or beside it.
 *  upright  Nu = max{0.0605 Ra^⅓; [1 + (0.104 Ra^0.293/(1 + (6310/Ra)^1.36))³]^⅓; 0.242 (Ra/A)^0.272}
 *  tilted, hot side above   1 + (Nu_upright − 1)·cos θ, which is 1, still air, at θ = π/2
 *  @param Ra      Rayleigh number on the gap [-]
 *  @param aspect  A, height over gap [-]
 *  @param tilt    θ, 0 upright, π/2 with the hot side above [rad]     @returns Nu on the gap, at least 1 [-]
 *  Range   Ra to 10⁷, A 5–110
 *  Error   ± 9 % upright (from memory)
 *  Source  ElSherbiny, Raithby & Hollands, J. Heat Transfer 104 (1982) 96–102; Arnold, Catton & Edwards,
 *          J. Heat Transfer 98 (1976) 67–71 (formulas from memory)
 *  Check   limits   tests/unit/receiver/coils.test.ts */
export function nusseltGap(Ra: number, aspect: number, tilt: number): number {
	const transition = (0.104 * power(Ra, 0.293)) / (1 + power(6310 / Ra, 1.36));
	const upright = Math.max(
		0.0605 * Math.cbrt(Ra),
		Math.cbrt(1 + transition * transition * transition),
		0.242 * power(Ra / aspect, 0.272),
	);
	return 1 + (upright - 1) * Math.cos(tilt);
}

/** Heat losses of a flat spiral behind a pane [W].
 *  The pane has a uniform temperature, in balance between the gap (convection and radiation) and the outside (wind, buoyancy and
 *  radiation to surroundings at air temperature); its absorption of sunlight is neglected. Radiated and convected heat are those
 *  that leave the pane. Conduction through the insulation behind the coil. */
export function glazedCoilLosses(
	receiver: GlazedCoilReceiver,
	conditions: ReceiverConditions,
): ReceiverLosses {
	requireWithin("receiver.coverGap", receiver.coverGap, 1e-3, 1);
	const { wallTemperature, ambient, wind, pressure, altitude } = conditions;
	const diameter = receiver.apertureDiameter;
	const difference = wallTemperature - ambient;
	const face = (Math.PI * diameter * diameter) / 4;
	let outsideShare = FIRST_SHARE;
	let loss = 0;
	let radiatedShare = 0;
	for (let pass = 0; pass < PASSES; pass++) {
		const pane = ambient + outsideShare * difference;
		const gap = gapCoefficient(receiver, wallTemperature, pane, pressure, altitude);
		const radiative = radiativeCoefficient(GLASS_EMITTANCE, pane, ambient);
		const outside = radiative + facingDiscCoefficient(diameter, altitude, pane, ambient, wind, pressure);
		outsideShare = gap / (gap + outside);
		loss = outsideShare * outside * face * difference;
		radiatedShare = radiative / outside;
	}
	const shell = insulatedShell(diameter / 2, 0, receiver.insulation.thickness);
	return {
		radiated: loss * radiatedShare,
		convected: loss * (1 - radiatedShare),
		conducted: insulationLoss(shell, receiver.insulation, conditions),
		unresolved: 0,
	};
}

function gapCoefficient(
	receiver: GlazedCoilReceiver,
	wallTemperature: number,
	pane: number,
	pressure: number,
	tilt: number,
): number {
	const gap = receiver.coverGap;
	const between = air((wallTemperature + pane) / 2, pressure);
	const Nu = nusseltGap(gapRayleigh(gap, wallTemperature, pane, between), gapAspect(receiver), tilt);
	const exchange = 1 / (1 / receiver.emittance + 1 / GLASS_EMITTANCE - 1); // two large parallel plates
	return (Nu * between.conductivity) / gap + radiativeCoefficient(exchange, wallTemperature, pane);
}

function gapRayleigh(gap: number, wallTemperature: number, pane: number, between: Air): number {
	const viscosity = between.kinematicViscosity;
	return (
		(GRAVITY * between.expansion * Math.abs(wallTemperature - pane) * cube(gap) * between.prandtl) /
		(viscosity * viscosity)
	);
}

/** Height over gap, with the mean chord of the disc as its height. */
function gapAspect({ apertureDiameter, coverGap }: GlazedCoilReceiver): number {
	return ((Math.PI / 4) * apertureDiameter) / coverGap;
}

/** Whether `nusseltGap` is used outside its range: aspect ratio, or Rayleigh number with a pane as cold as the air. */
export function gapOutsideRange(receiver: GlazedCoilReceiver, conditions: ReceiverConditions): boolean {
	const { wallTemperature, ambient, pressure } = conditions;
	const aspect = gapAspect(receiver);
	const between = air((wallTemperature + ambient) / 2, pressure);
	const Ra = gapRayleigh(receiver.coverGap, wallTemperature, ambient, between);
	return !(aspect >= LEAST_ASPECT && aspect <= MOST_ASPECT && Ra <= MOST_RAYLEIGH);
}
