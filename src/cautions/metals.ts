import { type Caution, type CautionRule, temperature } from "./caution.ts";

const ZINC_LIMIT = 333.15; // [K] 60 °C: above it zinc no longer protects the steel; DIN 50930 (value from memory)

/** Galvanic corrosion and hot zinc. */
export const metals: CautionRule = ({ build, outcome }) => {
	const walls = [build.tankWall, build.coilWall, ...build.pipeWalls];
	const cautions: Caution[] = [];
	if (!walls.includes("galvanisedSteel")) return cautions;
	if (walls.includes("copper"))
		cautions.push({
			code: "copperWithGalvanised",
			severity: "warning",
			parameters: {},
			message:
				"Copper and galvanised steel in the same water corrode the steel, worst where water runs from copper to steel. Put a listed dielectric fitting between them, or use one metal, as a licensed plumber advises.",
		});
	if (outcome.endTop > ZINC_LIMIT)
		cautions.push({
			code: "galvanisedTooHot",
			severity: "warning",
			parameters: { limit: temperature(ZINC_LIMIT), topTemperature: temperature(outcome.endTop) },
			message:
				"Galvanised steel loses its protection above {limit}, and this tank ends at {topTemperature}. Keep it colder, or choose another tank with a licensed plumber.",
		});
	return cautions;
};
