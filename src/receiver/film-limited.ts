import { DomainError } from "../errors.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { type ReceiverOperation, receiverBalance } from "./balance.ts";
import { absorberWidth } from "./narrowest-absorber.ts";
import { receiverOfWidth } from "./proportions.ts";
import type { TubeReceiver } from "./receiver.ts";

const MOST_GROWTH = 30; // times the original size; common practice, no source
const GROWTH = 1.5; // ratio of successive trial sizes, small enough to keep the film near its measured range
const TOLERANCE = 1e-4; // [m]

/** The receiver enlarged until the mean film temperature of its fluid is below a limit: the interior of a cavity or the disc of a flat spiral,
 *  with the tube that covers it. A receiver that is below the limit already is returned unchanged.
 *  @param receiver   with its proportions     @param operation  the most severe case: full sun on cold fluid at rest
 *  @param filmLimit  [K]
 *  Range   DomainError impossible where thirty times the size is not sufficient
 *  Assumes that the absorbed light does not change with size (a wider disc absorbs slightly more) and is evenly distributed. On a disc
 *  in a focus it forms a spot of fixed size, so the film of the inner turns is not limited */
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
	const enlarged = (to: number): TubeReceiver => receiverOfWidth(receiver, to);
	const excess = (to: number): number => receiverBalance(enlarged(to), operation).filmTemperature - filmLimit;
	if (receiverBalance(receiver, operation).filmTemperature <= filmLimit) return receiver;
	let small = size;
	let large = size * GROWTH;
	while (excess(large) > 0) {
		if (large > size * MOST_GROWTH)
			throw new DomainError(
				"impossible",
				"receiver.film",
				"no receiver with this tube keeps the film of the fluid below its limit",
				{
					filmLimit,
					largest: large,
				},
			);
		small = large;
		large *= GROWTH;
	}
	return enlarged(bracketedRoot(excess, small, large, TOLERANCE));
}
