/** A body on its way in. */
export interface ArrivingBody {
	/** Counts bytes of it that have come. */
	add(bytes: number): void;
	/** It is whole, or nobody waits for it any more. */
	end(): void;
}

/** A body begins to come.
 *  @param giveWay  gives it up; called at most once, and not after its end */
export type ArrivingBodies = (giveWay: () => void) => ArrivingBody;

/** Bounds what is held of bodies that have not come whole. Beyond it the one gives way that has been coming longest: a body
 *  sent in earnest is there within moments, one held back on purpose is not, so those who do that displace one another.
 *  @param most  bytes of all such bodies together */
export function arrivingBodies(most: number): ArrivingBodies {
	let held = 0;
	const coming = new Set<{ bytes: number; readonly giveWay: () => void }>(); // in the order in which they began
	return (giveWay) => {
		const body = { bytes: 0, giveWay };
		coming.add(body);
		const end = (one: typeof body) => {
			if (coming.delete(one)) held -= one.bytes;
		};
		return {
			add(bytes) {
				if (!coming.has(body)) return;
				body.bytes += bytes;
				held += bytes;
				for (const oldest of coming) {
					if (held <= most) break;
					end(oldest);
					oldest.giveWay();
				}
			},
			end: () => end(body),
		};
	};
}
