import type { DayAir } from "../../src/index.ts";
import type { Assumed } from "../wire/defaults.ts";
import { toSi } from "../wire/units.ts";
import type { Sky } from "./sky.ts";

/** The air of a sky's day, as far as the caller stated it.
 *  @param assumed  every default that the request took */
export function dayAir(sky: Sky, assumed: readonly Assumed[]): DayAir {
	if (sky.kind === "clear") return airAt("/sky/ambientMinC", sky.ambientMinC, assumed);
	return airAt("/sky/ambientC", Math.min(...[sky.ambientC].flat()), assumed);
}

/** The air of one field. */
export function airAt(field: string, ambientC: number, assumed: readonly Assumed[]): DayAir {
	return {
		coldest: toSi.celsius(ambientC),
		source: assumed.some(({ pointer }) => pointer === field) ? "assumed" : "stated",
	};
}
