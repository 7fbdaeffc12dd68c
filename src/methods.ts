/** A correlation or model that an answer rests on. */
export interface Method {
	readonly name: string;
	readonly source?: string; // citation; absent where the caller's own data are the source
	readonly confirmed: boolean; // false where its formula or a coefficient was not yet compared with its source
	readonly outsideRange: boolean; // whether it was used outside its published range
}

/** A method before it is known whether its range was left. */
export type Citation = Omit<Method, "outsideRange">;

export const inRange = (citation: Citation): Method => ({ ...citation, outsideRange: false });
