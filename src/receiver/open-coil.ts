import { radiativeCoefficient } from "../heat/radiation.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { facingDiscCoefficient } from "./facing-disc.ts";
import { laggedShell, laggingLoss } from "./lagging.ts";
import type { ReceiverLosses } from "./loss-paths.ts";
import type { OpenCoilReceiver } from "./receiver.ts";

/** What a bare flat spiral loses [W].
 *  Radiation and convection from the face as from a smooth disc at the wall's temperature, to a dish and surroundings
 *  at air temperature; conduction through the lagging behind. */
export function openCoilLosses(receiver: OpenCoilReceiver, conditions: ReceiverConditions): ReceiverLosses {
	const { wallTemperature, ambient, wind, pressure, altitude } = conditions;
	const diameter = receiver.apertureDiameter;
	const difference = wallTemperature - ambient;
	const face = (Math.PI * diameter * diameter) / 4;
	const convective = facingDiscCoefficient(diameter, altitude, wallTemperature, ambient, wind, pressure);
	const shell = laggedShell(diameter / 2, 0, receiver.insulation.thickness);
	return {
		radiated: radiativeCoefficient(receiver.emittance, wallTemperature, ambient) * face * difference,
		convected: convective * face * difference,
		conducted: laggingLoss(shell, receiver.insulation, conditions),
		unresolved: 0,
	};
}
