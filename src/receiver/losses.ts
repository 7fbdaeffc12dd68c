import { requireWithin } from "../errors.ts";
import { cavityLosses } from "./cavity.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { glazedCoilLosses } from "./glazed-coil.ts";
import type { ReceiverLosses } from "./loss-paths.ts";
import { openCoilLosses } from "./open-coil.ts";
import type { Receiver } from "./receiver.ts";

/** Heat losses of a receiver of any kind [W]: continuous in all conditions, zero for equal temperatures of wall and air.
 *  An efficiency line loses lossCoefficient·(wallTemperature − ambient), where `wallTemperature` is that of the leaving fluid.
 *  Range   wall 1–10 000 K, wind 0–100 m/s, altitude 0 to π/2, else DomainError out_of_range */
export function receiverLosses(receiver: Receiver, conditions: ReceiverConditions): ReceiverLosses {
	requireWithin("receiver.wallTemperature", conditions.wallTemperature, 1, 10_000);
	requireWithin("receiver.altitude", conditions.altitude, 0, Math.PI / 2);
	requireWithin("receiver.wind", conditions.wind, 0, 100);
	switch (receiver.kind) {
		case "cavity":
			return cavityLosses(receiver, conditions);
		case "openCoil":
			return openCoilLosses(receiver, conditions);
		case "glazedCoil":
			return glazedCoilLosses(receiver, conditions);
		case "efficiencyLine":
			return {
				radiated: 0,
				convected: 0,
				conducted: 0,
				unresolved: receiver.lossCoefficient * (conditions.wallTemperature - conditions.ambient),
			};
		default:
			return receiver satisfies never;
	}
}
