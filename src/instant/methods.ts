import { INTERCEPT_FACTOR } from "../dish/methods.ts";
import { water } from "../fluids/water.ts";
import { helicalOutsideRange } from "../heat/helical-coil.ts";
import { HELICAL_FILM, HORIZONTAL_CYLINDER, insulationMethod } from "../heat/methods.ts";
import { inRange, type Method } from "../methods.ts";
import type { ReceiverConditions } from "../receiver/conditions.ts";
import { receiverFilmOutsideRange } from "../receiver/film.ts";
import { receiverMethods } from "../receiver/methods.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { Heater } from "./heater.ts";
import type { OilVessel } from "./oil-vessel.ts";
import { outletMethods } from "./outlet-methods.ts";
import type { InstantRow } from "./row.ts";
import { flowOf, flows } from "./steady.ts";
import type { InstantTask } from "./task.ts";

/** Methods behind the results of an instant heater, each with a flag where a row is outside its published range.
 *  @param rows  one or more */
export function instantMethods(
	heater: Heater,
	task: InstantTask,
	rows: readonly InstantRow[],
): readonly Method[] {
	const { receiver } = heater;
	return [
		...(hasTube(receiver)
			? [
					inRange(INTERCEPT_FACTOR),
					{
						name: "Film inside the receiver's tube",
						...HELICAL_FILM,
						outsideRange: rows.some((row) => filmOutsideRange(heater, task, row)),
					},
				]
			: []),
		...receiverMethods(receiver, [
			stateOf(rows[0]!, task),
			...rows.slice(1).map((row) => stateOf(row, task)),
		]),
		inRange({
			name: "Boiling point at the pressure of the line",
			source: "IAPWS-IF97, region 4; ISO 2533:1975",
			confirmed: true,
		}),
		...arrangementMethods(task, rows),
	];
}

function arrangementMethods(task: InstantTask, rows: readonly InstantRow[]): readonly Method[] {
	const { arrangement } = task;
	switch (arrangement.kind) {
		case "vessel":
			return vesselMethods(arrangement.vessel, task, rows);
		case "direct":
			return outletMethods(arrangement.outlet, task, rows);
		default:
			return arrangement satisfies never;
	}
}

/** The receiver under one sun; at the wanted temperature without flow. */
function stateOf({ steady, conditions }: InstantRow, { duty }: InstantTask): ReceiverConditions {
	const wall = flows(steady) ? (steady.oil ? steady.oil.film : steady.hottestWall) : undefined;
	return { ...conditions, wallTemperature: wall ?? duty.wanted };
}

function filmOutsideRange(
	{ receiver }: Heater,
	{ arrangement, duty }: InstantTask,
	{ steady }: InstantRow,
): boolean {
	if (!hasTube(receiver) || !flows(steady)) return false;
	switch (arrangement.kind) {
		case "vessel": {
			const { fluid, circulation } = arrangement.vessel;
			const temperature = steady.oil?.temperature ?? duty.wanted;
			return receiverFilmOutsideRange(receiver, fluid, temperature, circulation);
		}
		case "direct": {
			const mean = (duty.cold + (steady.outlet?.leaving ?? duty.wanted)) / 2;
			return receiverFilmOutsideRange(receiver, water, mean, steady.massFlow / water.density(mean));
		}
		default:
			return arrangement satisfies never;
	}
}

function vesselMethods(
	vessel: OilVessel,
	{ duty }: InstantTask,
	rows: readonly InstantRow[],
): readonly Method[] {
	const { coil, insulation } = vessel;
	const flowing = rows.filter(({ steady }) => flows(steady));
	const coldest = Math.min(...rows.map(({ conditions }) => conditions.ambient));
	const mean = (duty.cold + duty.wanted) / 2;
	const viscosity = water.viscosity(mean);
	const Pr = (viscosity * water.heatCapacity(mean)) / water.conductivity(mean);
	const ratio = coil.innerDiameter / coil.coilDiameter;
	const reynolds = (row: InstantRow) => (4 * flowOf(row.steady)) / (Math.PI * coil.innerDiameter * viscosity);
	return [
		{
			name: "Film of the water inside the vessel's coil",
			...HELICAL_FILM,
			outsideRange: flowing.some((row) => helicalOutsideRange(reynolds(row), Pr, ratio)),
		},
		inRange({ name: "Natural convection of the oil around the coil", ...HORIZONTAL_CYLINDER }),
		insulationMethod("Vessel", insulation, vessel.limit, coldest),
	];
}
