/** One use of hot water: either so much at the tap, or so much heat above the mains. */
export interface Draw {
	readonly time: number; // unix time at which it begins [s]
	readonly demand:
		| { readonly kind: "volume"; readonly volume: number /* at the tap [m³] */ }
		| { readonly kind: "energy"; readonly energy: number /* above the mains [J] */ };
	readonly temperature: number; // wanted at the tap [K]
	readonly flow: number; // at the tap [m³/s]
}
