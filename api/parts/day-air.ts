import type { DayAir } from "../../src/index.ts";
import { valueAt } from "../validation/schema-tree.ts";
import { toSi } from "../wire/units.ts";
import type { Sky } from "./sky.ts";

/** The air temperature of a sky's day, stated or assumed.
 *  @param sent  the request as it came */
export function dayAir(sky: Sky, sent: unknown): DayAir {
	switch (sky.kind) {
		case "clear":
			return airAt(["sky", "ambientMinC"], sky.ambientMinC, sent);
		case "measured":
			return airAt(["sky", "ambientC"], Math.min(...[sky.ambientC].flat()), sent);
		default:
			return sky satisfies never;
	}
}

/** The air temperature of one field: stated if the request sends it, else assumed.
 *  @param sent  the request as it came */
export function airAt(field: readonly string[], ambientC: number, sent: unknown): DayAir {
	return {
		coldest: toSi.celsius(ambientC),
		source: valueAt(sent, field) === undefined ? "assumed" : "stated",
	};
}
