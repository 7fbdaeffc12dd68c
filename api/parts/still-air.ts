import { practice } from "../../src/index.ts";
import { assume } from "../wire/defaults.ts";
import { celsius, metres } from "../wire/units.ts";

/** The air around a part in a request about that part alone. */
export const air = {
	ambientC: assume(celsius("Temperature of the surrounding air.", -60, 60), 20, practice("a mild day")),
	elevationM: assume(
		metres("Elevation above sea level. Thinner air carries away less heat.", -430, 6000),
		0,
		practice("sea level; at 3000 m, wind removes about a sixth less heat"),
	),
};
