import { GRAVITY } from "../constants.ts";
import { air } from "../fluids/air.ts";
import { radiativeCoefficient } from "../heat/radiation.ts";
import { cube } from "../numeric/power.ts";
import { nusseltKoenigMarvin, nusseltStineMcDonald, windCoefficientMa } from "./cavity-convection.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { insulatedShell, insulationLoss } from "./insulation-loss.ts";
import type { ReceiverLosses } from "./loss-paths.ts";
import type { CavityReceiver } from "./receiver.ts";

/** Inner wall covered by the tube: cylinder and back, without the ring around the aperture [m²]. */
export function cavityWallArea(receiver: CavityReceiver): number {
	return Math.PI * receiver.innerDiameter * (receiver.depth + receiver.innerDiameter / 4);
}

/** Effective emittance of the aperture of a cavity, and its absorptance for diffuse light, both increased by reflections inside.
 *  The light of a dish strikes some parts of the wall first: see `cavityAbsorptance`.
 *  a_eff = a/[a + (1 − a)·A_aperture/A_wall]
 *  @param surface    a of the wall [-]
 *  @param areaRatio  aperture over wall [-]     @returns a_eff, greater than a [-]
 *  Range   grey diffuse wall, one temperature, areaRatio ≤ 1
 *  Error   none given; a specular wall differs by 1–2 %
 *  Source  Duffie & Beckman, Solar Engineering of Thermal Processes, cavity receivers (formula from memory)
 *  Check   a 0.90 and 0.85 at four ratios   tests/reference/receiver.reference.ts */
export function effectiveCavityAbsorptance(surface: number, areaRatio: number): number {
	return surface / (surface + (1 - surface) * areaRatio);
}

/** Heat losses of a cavity [W].
 *  Radiation through the aperture with the effective emittance, to dish and surroundings at air temperature (the sky
 *  is behind the receiver). Convection: sum of Stine & McDonald and, for wind, Ma. Conduction: wall and back
 *  through the insulation. A wall colder than the air gains heat with the same coefficients. */
export function cavityLosses(receiver: CavityReceiver, conditions: ReceiverConditions): ReceiverLosses {
	const { wallTemperature, ambient } = conditions;
	const { apertureDiameter, innerDiameter, depth, tube, insulation } = receiver;
	const difference = wallTemperature - ambient;
	const aperture = (Math.PI * apertureDiameter * apertureDiameter) / 4;
	const wall = cavityWallArea(receiver);
	const emittance = effectiveCavityAbsorptance(receiver.emittance, aperture / wall);
	const coefficient = cavityFreeCoefficient(receiver, conditions) + windCoefficientMa(conditions.wind);
	const shell = insulatedShell(
		innerDiameter / 2 + tube.outerDiameter,
		depth + tube.outerDiameter,
		insulation.thickness,
	);
	return {
		radiated: radiativeCoefficient(emittance, wallTemperature, ambient) * aperture * difference,
		convected: coefficient * wall * difference,
		conducted: insulationLoss(shell, insulation, conditions),
		unresolved: 0,
	};
}

/** Coefficient of free convection on the complete inner wall by Stine & McDonald [W/m²K]. */
export function cavityFreeCoefficient(receiver: CavityReceiver, conditions: ReceiverConditions): number {
	const { wallTemperature, ambient, pressure, altitude } = conditions;
	const length = (receiver.innerDiameter + receiver.depth) / 2;
	const film = air((wallTemperature + ambient) / 2, pressure);
	const Gr = grashof(Math.abs(wallTemperature - ambient) / ambient, length, film.kinematicViscosity);
	const Nu = nusseltStineMcDonald(
		Gr,
		wallTemperature / ambient,
		altitude,
		receiver.apertureDiameter / length,
	);
	return (Nu * film.conductivity) / length;
}

/** The same by Koenig & Marvin [W/m²K], for the difference between models. */
export function cavityFreeCoefficientKoenigMarvin(
	receiver: CavityReceiver,
	conditions: ReceiverConditions,
): number {
	const { wallTemperature, ambient, pressure, altitude } = conditions;
	const length = receiver.innerDiameter * Math.SQRT1_2;
	const reference = air((11 * wallTemperature + 3 * ambient) / 16, pressure);
	const relative = Math.abs(wallTemperature - ambient) * reference.expansion;
	const Gr = grashof(relative, length, reference.kinematicViscosity);
	const Nu = nusseltKoenigMarvin(
		Gr * reference.prandtl,
		altitude,
		receiver.apertureDiameter / receiver.innerDiameter,
	);
	return (Nu * reference.conductivity) / length;
}

/** Convective loss of a cavity by wind and buoyancy with Koenig & Marvin [W]; `cavityLosses` uses
 *  Stine & McDonald. */
export function cavityConvectedKoenigMarvin(
	receiver: CavityReceiver,
	conditions: ReceiverConditions,
): number {
	const coefficient =
		cavityFreeCoefficientKoenigMarvin(receiver, conditions) + windCoefficientMa(conditions.wind);
	return coefficient * cavityWallArea(receiver) * (conditions.wallTemperature - conditions.ambient);
}

function grashof(relativeDifference: number, length: number, kinematicViscosity: number): number {
	return (GRAVITY * relativeDifference * cube(length)) / (kinematicViscosity * kinematicViscosity);
}
