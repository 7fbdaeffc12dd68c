/** A body being received. */
export interface IncomingBody {
	/** Counts received bytes. */
	add(bytes: number): void;
	/** The body is complete, or no longer needed. */
	end(): void;
}

/** Registers a body.
 *  @param drop  abandons it; called at most once, and not after its end */
export type IncomingBodies = (drop: () => void) => IncomingBody;

/** Limits the memory of incomplete bodies. Beyond the limit the oldest is dropped: a genuine body arrives within moments, one that is
 *  held back on purpose does not, so such senders displace one another.
 *  @param limit  bytes of all incomplete bodies together */
export function incomingBodies(limit: number): IncomingBodies {
	let held = 0;
	const bodies = new Set<{ bytes: number; readonly drop: () => void }>(); // oldest first
	return (drop) => {
		const body = { bytes: 0, drop };
		bodies.add(body);
		const end = (one: typeof body) => {
			if (bodies.delete(one)) held -= one.bytes;
		};
		return {
			add(bytes) {
				if (!bodies.has(body)) return;
				body.bytes += bytes;
				held += bytes;
				for (const oldest of bodies) {
					if (held <= limit) break;
					end(oldest);
					oldest.drop();
				}
			},
			end: () => end(body),
		};
	};
}
