import { DomainError } from "../errors.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { type ReceiverOperation, receiverBalance } from "./balance.ts";
import { absorberWidth } from "./narrowest.ts";
import { receiverOfWidth } from "./proportions.ts";
import type { TubeReceiver } from "./receiver.ts";

const MOST_GROWTH = 30; // times the size it came with; common practice, no source
const GROWTH = 1.5; // from one size tried to the next, so that no film is asked far beyond what it was measured on
const TOLERANCE = 1e-4; // [m]

/** The receiver grown until its fluid's mean film keeps below a limit: of a cavity the hollow, of a flat spiral the disc, each with the tube
 *  that covers it. One that keeps below it already stays as it is.
 *  @param receiver   as proportioned     @param operation  the hardest duty it must bear: full sun on a cold, resting fluid
 *  @param filmLimit  [K]
 *  Range   DomainError impossible where thirty times the size is not enough
 *  Assumes what is absorbed does not change with the size, a wider disc catches a little more; and that it is spread evenly. On a disc
 *  in a focus it falls on a spot that no growth widens: there the film of the inner turns is not limited */
export function filmLimitedReceiver<R extends TubeReceiver>(
	receiver: R,
	operation: ReceiverOperation,
	filmLimit: number,
): R;
export function filmLimitedReceiver(
	receiver: TubeReceiver,
	operation: ReceiverOperation,
	filmLimit: number,
): TubeReceiver {
	const size = absorberWidth(receiver);
	const grown = (to: number): TubeReceiver => receiverOfWidth(receiver, to);
	const excess = (to: number): number => receiverBalance(grown(to), operation).filmTemperature - filmLimit;
	if (receiverBalance(receiver, operation).filmTemperature <= filmLimit) return receiver;
	let small = size;
	let large = size * GROWTH;
	while (excess(large) > 0) {
		if (large > size * MOST_GROWTH)
			throw new DomainError(
				"impossible",
				"receiver.film",
				"no receiver of this tube keeps the fluid's film below its limit",
				{
					filmLimit,
					largest: large,
				},
			);
		small = large;
		large *= GROWTH;
	}
	return grown(bracketedRoot(excess, small, large, TOLERANCE));
}
