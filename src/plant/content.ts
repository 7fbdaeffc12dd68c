import { boreVolume } from "../loop/bore.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { Plant } from "./plant.ts";

/** Fluid in the whole loop: pipes, coil and receiver [m³]. An efficiency line's receiver is not known from inside. */
export function loopContent({ loop, coil, receiver }: Pick<Plant, "loop" | "coil" | "receiver">): number {
	const inReceiver = hasTube(receiver) ? boreVolume(receiver.tube) : 0;
	return boreVolume(loop.supply) + boreVolume(loop.return) + boreVolume(coil) + inReceiver;
}
