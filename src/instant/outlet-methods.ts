import { water } from "../fluids/water.ts";
import { CYLINDER_IN_WIND, insulationMethod, moistureMethod, STRAIGHT_FILM } from "../heat/methods.ts";
import { regime } from "../loop/flow.ts";
import type { Pipe } from "../loop/loop.ts";
import { inRange, type Method } from "../methods.ts";
import type { InstantRow } from "./row.ts";
import { flowOf, flows } from "./steady.ts";
import type { InstantTask } from "./task.ts";

/** Methods behind the pipe to the tap, each with a flag where a row is outside its published range. */
export function outletMethods(
	pipe: Pipe,
	{ duty }: InstantTask,
	rows: readonly InstantRow[],
): readonly Method[] {
	if (pipe.length === 0) return [];
	const { thickness, moisture } = pipe.insulation;
	const coldest = Math.min(...rows.map(({ conditions }) => conditions.ambient));
	const hottest = Math.max(
		...rows.map(({ steady }) => (flows(steady) ? steady.outlet?.leaving : undefined) ?? duty.wanted),
	);
	const regimes = rows.map(({ steady }) =>
		regime((4 * flowOf(steady)) / (Math.PI * pipe.innerDiameter * water.viscosity(duty.wanted))),
	);
	return [
		{
			name: "Film inside the pipe to the tap",
			...STRAIGHT_FILM,
			outsideRange: regimes.includes("transitional"),
		},
		inRange({ name: "Wind and buoyancy around the pipe to the tap", ...CYLINDER_IN_WIND }),
		...(thickness > 0 ? [insulationMethod("Pipe", pipe.insulation, hottest, coldest)] : []),
		...(thickness > 0 && moisture > 0 ? [moistureMethod([])] : []),
	];
}
