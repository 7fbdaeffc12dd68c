/** A correlation or model that an answer rests on, and whether it was asked outside its published range. */
export interface Method {
	readonly name: string;
	readonly source: string;
	readonly outsideRange: boolean;
}
