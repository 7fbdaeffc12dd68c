/** What may be there already. Waiting for a promise costs a light answer as much as all the rest of it, so what needs no
 *  waiting does none. */
export type Maybe<T> = T | Promise<T>;

/** Goes on with a value: at once where it is there, else when it comes. */
export function after<T, U>(value: Maybe<T>, next: (value: T) => Maybe<U>): Maybe<U> {
	return value instanceof Promise ? value.then(next) : next(value);
}

/** A promise that does something once it is settled, whichever way: what `finally` does, for a third of its promises. */
export function settled<T>(promise: Promise<T>, then: () => void): Promise<T> {
	return promise.then(
		(value) => {
			then();
			return value;
		},
		(error) => {
			then();
			throw error;
		},
	);
}
