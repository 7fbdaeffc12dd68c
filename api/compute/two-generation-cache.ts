/** What was kept under a name within a room of bytes; what is used stays longest. */
export interface Store<T> {
	recall(name: string): T | undefined;
	keep(name: string, value: T): void;
}

/** Two generations instead of a queue: what is used goes into the young one; when that fills half the room it becomes the
 *  old one, and what was old and not used since goes.
 *  @param most  bytes of all that is kept; no single value takes more than an eighth, so none pushes out all others
 *  @param bytesOf  bytes of one value, its name included */
export function store<T>(most: number, bytesOf: (name: string, value: T) => number): Store<T> {
	let young = new Map<string, T>();
	let old = new Map<string, T>();
	let size = 0; // of the young [bytes]
	const keep = (name: string, value: T): void => {
		const bytes = bytesOf(name, value);
		if (bytes > most / 8) return;
		if (size + bytes > most / 2) {
			old = young;
			young = new Map();
			size = 0;
		}
		young.set(name, value);
		size += bytes;
	};
	const recall = (name: string): T | undefined => {
		const value = young.get(name);
		if (value !== undefined) return value;
		const before = old.get(name);
		if (before !== undefined) keep(name, before);
		return before;
	};
	return { keep, recall };
}
