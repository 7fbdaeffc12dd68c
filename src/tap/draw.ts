/** One use of hot water: a volume at the tap, or an amount of heat relative to the mains. */
export interface Draw {
	readonly time: number; // unix time of its start [s]
	readonly demand:
		| { readonly kind: "volume"; readonly volume: number /* at the tap [m³] */ }
		| { readonly kind: "energy"; readonly energy: number /* above the mains [J] */ };
	readonly temperature: number; // wanted at the tap [K]
	readonly flow: number; // at the tap [m³/s]
}
