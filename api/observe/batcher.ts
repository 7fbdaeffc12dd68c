const BATCH_SIZE = 64;
const PAUSE = 200; // [ms] longest time before a batch is delivered

/** Collects items and delivers them in batches, which costs far less than delivering each.
 *  @returns  `add` for one item, `flush` to deliver all collected items */
export function batcher<T>(deliver: (batch: readonly T[]) => void) {
	let batch: T[] = [];
	let timer: ReturnType<typeof setTimeout> | undefined;
	const flush = (): void => {
		clearTimeout(timer);
		timer = undefined;
		const items = batch;
		batch = [];
		if (items.length > 0) deliver(items);
	};
	const add = (item: T): void => {
		batch.push(item);
		if (batch.length >= BATCH_SIZE) flush();
		else timer ??= setTimeout(flush, PAUSE);
	};
	return { add, flush };
}
