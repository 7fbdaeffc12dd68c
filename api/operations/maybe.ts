/** A value or a promise of it. Awaiting a promise costs as much as computing a light answer, so values are passed on
 *  synchronously where possible. */
export type Maybe<T> = T | Promise<T>;

/** Continues with a value: at once if it is present, else when the promise resolves. */
export function after<T, U>(value: Maybe<T>, next: (value: T) => Maybe<U>): Maybe<U> {
	return value instanceof Promise ? value.then(next) : next(value);
}

/** Calls a function when a promise settles, as `finally` does, with a third of its promises. */
export function whenSettled<T>(promise: Promise<T>, then: () => void): Promise<T> {
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
