import { water } from "../fluids/water.ts";
import { insulationMaterial, insulationOutsideRange } from "../heat/insulation.ts";
import { regime } from "../loop/flow.ts";
import type { Pipe } from "../loop/loop.ts";
import type { Method } from "../methods.ts";
import type { InstantRow } from "./row.ts";
import { flowOf, flows } from "./steady.ts";
import type { InstantTask } from "./task.ts";

const inRange = (name: string, source: string): Method => ({ name, source, outsideRange: false });

/** What the pipe to the tap rests on, each correlation with a flag where a row took it outside its published range. */
export function outletMethods(
	pipe: Pipe,
	{ duty }: InstantTask,
	rows: readonly InstantRow[],
): readonly Method[] {
	if (pipe.length === 0) return [];
	const { material: id, thickness, moisture } = pipe.insulation;
	const coldest = Math.min(...rows.map(({ conditions }) => conditions.ambient));
	const hottest = Math.max(
		...rows.map(({ steady }) => (flows(steady) ? steady.outlet?.leaving : undefined) ?? duty.wanted),
	);
	const material = insulationMaterial(id);
	const regimes = rows.map(({ steady }) =>
		regime((4 * flowOf(steady)) / (Math.PI * pipe.innerDiameter * water.viscosity(duty.wanted))),
	);
	return [
		{
			name: "Film inside the pipe to the tap",
			source:
				"Hausen, Z. VDI Beih. Verfahrenstechnik 4 (1943) 91–98; Gnielinski, Int. Chem. Eng. 16 (1976) 359–368",
			outsideRange: regimes.includes("transitional"),
		},
		inRange(
			"Wind and buoyancy around the pipe to the tap",
			"Churchill & Bernstein, J. Heat Transfer 99 (1977) 300–306; Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053",
		),
		...(thickness > 0
			? [
					{
						name: `Pipe lagging: conductivity of ${material.name} at its mean temperature`,
						source: material.source,
						outsideRange: insulationOutsideRange(material, hottest, coldest),
					},
				]
			: []),
		...(thickness > 0 && moisture > 0
			? [inRange("Conductivity of damp lagging", "ISO 10456:2007, eq. 4 and table 4 (values from memory)")]
			: []),
	];
}
