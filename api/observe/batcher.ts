const MOST = 64; // at once
const PAUSE = 200; // [ms] after which they are handed on in any case

/** Gathers what happens and hands it on in batches: telling many at once costs far less than telling each.
 *  @returns  what takes one, and what hands on all that is gathered */
export function batcher<T>(handOn: (batch: readonly T[]) => void) {
	let batch: T[] = [];
	let timer: ReturnType<typeof setTimeout> | undefined;
	const flush = (): void => {
		clearTimeout(timer);
		timer = undefined;
		const gathered = batch;
		batch = [];
		if (gathered.length > 0) handOn(gathered);
	};
	const take = (one: T): void => {
		batch.push(one);
		if (batch.length >= MOST) flush();
		else timer ??= setTimeout(flush, PAUSE);
	};
	return { take, flush };
}
