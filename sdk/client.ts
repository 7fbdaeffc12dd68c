import { asked, type Call, type Input, type RaykettleOptions } from "./call.ts";
import { OPERATIONS, type Raykettle } from "./operations.ts";

/** A client of the service: one method for each operation of the contract. */
export function createRaykettle(options: RaykettleOptions): Raykettle {
	const methods = Object.entries(OPERATIONS).map(([name, [method, path, asks]]) => [
		name,
		(...given: unknown[]) => {
			const [input, call] = asks ? given : [{}, given[0]];
			return asked(options, method, path, (input ?? {}) as Input, (call ?? {}) as Call);
		},
	]);
	return Object.fromEntries(methods) as Raykettle;
}
