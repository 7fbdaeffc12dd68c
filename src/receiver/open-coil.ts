import { radiativeCoefficient } from "../heat/radiation.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { facingDiscCoefficient } from "./facing-disc.ts";
import { insulatedShell, insulationLoss } from "./insulation-loss.ts";
import type { ReceiverLosses } from "./loss-paths.ts";
import type { OpenCoilReceiver } from "./receiver.ts";

/** Heat losses of a bare flat spiral [W].
 *  Radiation and convection from the face as from a smooth disc at wall temperature, to dish and surroundings
 *  at air temperature; conduction through the insulation behind. */
export function openCoilLosses(receiver: OpenCoilReceiver, conditions: ReceiverConditions): ReceiverLosses {
	const { wallTemperature, ambient, wind, pressure, altitude } = conditions;
	const diameter = receiver.apertureDiameter;
	const difference = wallTemperature - ambient;
	const face = (Math.PI * diameter * diameter) / 4;
	const convective = facingDiscCoefficient(diameter, altitude, wallTemperature, ambient, wind, pressure);
	const shell = insulatedShell(diameter / 2, 0, receiver.insulation.thickness);
	return {
		radiated: radiativeCoefficient(receiver.emittance, wallTemperature, ambient) * face * difference,
		convected: convective * face * difference,
		conducted: insulationLoss(shell, receiver.insulation, conditions),
		unresolved: 0,
	};
}
