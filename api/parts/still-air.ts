import { practice } from "../../src/index.ts";
import { assume } from "../wire/defaults.ts";
import { celsius, metres } from "../wire/units.ts";

/** What is known of the air around a part that is asked about on its own. */
export const air = {
	ambientC: assume(celsius("Air temperature.", -60, 60), 20, practice("a mild day")),
	elevationM: assume(
		metres("Above sea level: thinner air carries less heat away.", -430, 6000),
		0,
		practice("sea level; at 3000 m the wind takes about a sixth less"),
	),
};
