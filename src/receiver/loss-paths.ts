/** Heat loss of a receiver by path [W]; negative where it gains heat from warmer air. */
export interface ReceiverLosses {
	readonly radiated: number;
	readonly convected: number;
	readonly conducted: number; // through the insulation
	readonly unresolved: number; // of an efficiency line, not divided by path
}

/** Sum over all paths [W]. */
export function totalReceiverLoss(losses: ReceiverLosses): number {
	return losses.radiated + losses.convected + losses.conducted + losses.unresolved;
}
