import type { Factor, Need } from "./factor.ts";
import type { TestRunResponse } from "./response.ts";

const WAYS: Readonly<Record<Need, { readonly pointers: readonly string[]; readonly message: string }>> = {
	beam: {
		pointers: ["/run/beamIrradianceWPerM2"],
		message: "Measure the beam on a plane that faces the sun.",
	},
	ambient: { pointers: ["/run/ambientC"], message: "Measure the air in the shade." },
	dish: { pointers: ["/dish"], message: "Say how large the dish is." },
	site: { pointers: ["/site"], message: "Say where the plant stands." },
	oilInAndOut: {
		pointers: ["/run/oilInC", "/run/oilOutC"],
		message: "Measure the fluid as it enters and as it leaves the receiver.",
	},
	rowsAtRest: {
		pointers: ["/run/time", "/run/pumpOn"],
		message:
			"Go on through the night, or stop the pump for an hour or more with hot water in the tank; without a beam column say by pumpOn which rows those are.",
	},
	rowsRunning: {
		pointers: ["/run/time", "/run/pumpOn"],
		message: "Take rows while the dish heats the tank.",
	},
	moreRows: {
		pointers: ["/run/time"],
		message: "Take more rows: by the minute, at least seven.",
	},
	longerRun: {
		pointers: ["/run/time"],
		message: "Run longer, so that the water rises further above the air, and through changing sun.",
	},
};

type Known = Pick<TestRunResponse, "factors" | "comparison">;

/** What would tell each thing that is undetermined, need by need, the one that tells most first. */
export function unlocksOf({ factors, comparison }: Known): TestRunResponse["unlocks"] {
	const found = new Map<Need, string[]>();
	const ask = (name: string, factor: Factor) => {
		if (factor.outcome === "determined") return;
		for (const need of factor.needs) found.set(need, [...(found.get(need) ?? []), name]);
	};
	for (const [name, factor] of Object.entries(factors)) ask(`factors.${name}`, factor);
	if (comparison.outcome === "compared")
		for (const { cause, ratio } of comparison.causes) ask(`comparison.causes.${cause}`, ratio);
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
