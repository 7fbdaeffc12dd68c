import type { Factor, Need } from "./factor.ts";
import type { TestRunResponse } from "./response.ts";

const WAYS: Readonly<Record<Need, { readonly pointers: readonly string[]; readonly message: string }>> = {
	beam: {
		pointers: ["/run/beamIrradianceWPerM2"],
		message: "Measure the beam irradiance on a plane that faces the sun.",
	},
	ambient: { pointers: ["/run/ambientC"], message: "Measure the air temperature in the shade." },
	dish: { pointers: ["/dish"], message: "Send the size of the dish." },
	site: { pointers: ["/site"], message: "Send the site of the plant." },
	oilInAndOut: {
		pointers: ["/run/oilInC", "/run/oilOutC"],
		message: "Measure the temperature of the fluid entering and leaving the receiver.",
	},
	rowsAtRest: {
		pointers: ["/run/time", "/run/pumpOn"],
		message:
			"Continue through the night, or stop the pump for an hour or more with hot water in the tank. Without a beam column, mark those rows with pumpOn.",
	},
	rowsRunning: {
		pointers: ["/run/time", "/run/pumpOn"],
		message: "Record rows while the dish heats the tank.",
	},
	moreRows: {
		pointers: ["/run/time"],
		message: "Record more rows: one per minute, at least seven.",
	},
	longerRun: {
		pointers: ["/run/time"],
		message: "Run longer and through changing sun, so that the water rises further above the air.",
	},
};

type Known = Pick<TestRunResponse, "factors" | "comparison">;

/** What to measure for the undetermined fields, the most useful measurement first. */
export function unlocksOf({ factors, comparison }: Known): TestRunResponse["unlocks"] {
	const found = new Map<Need, string[]>();
	const collect = (name: string, factor: Factor) => {
		if (factor.outcome === "determined") return;
		for (const need of factor.needs) found.set(need, [...(found.get(need) ?? []), name]);
	};
	for (const [name, factor] of Object.entries(factors)) collect(`factors.${name}`, factor);
	if (comparison.outcome === "compared")
		for (const { cause, ratio } of comparison.causes) collect(`comparison.causes.${cause}`, ratio);
	else for (const need of comparison.needs) found.set(need, [...(found.get(need) ?? []), "comparison"]);
	return [...found]
		.toSorted(([, a], [, b]) => b.length - a.length)
		.map(([need, names]) => ({
			need,
			pointers: [...WAYS[need].pointers],
			factors: names,
			message: WAYS[need].message,
		}));
}
