import { boreVolume } from "../loop/bore.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { Plant } from "./plant.ts";

/** Volume of fluid in the loop: pipes, coil and receiver [m³]; the unknown content of an efficiency line's receiver counts as zero. */
export function loopContent({ loop, coil, receiver }: Pick<Plant, "loop" | "coil" | "receiver">): number {
	const inReceiver = hasTube(receiver) ? boreVolume(receiver.tube) : 0;
	return boreVolume(loop.supply) + boreVolume(loop.return) + boreVolume(coil) + inReceiver;
}
