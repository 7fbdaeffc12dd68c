/** Heat a receiver loses, by path [W]; negative where it gains from warmer air. */
export interface ReceiverLosses {
	readonly radiated: number;
	readonly convected: number;
	readonly conducted: number; // through the lagging
	readonly unresolved: number; // an efficiency line's, not split
}

/** The sum over all paths [W]. */
export function totalReceiverLoss(losses: ReceiverLosses): number {
	return losses.radiated + losses.convected + losses.conducted + losses.unresolved;
}
