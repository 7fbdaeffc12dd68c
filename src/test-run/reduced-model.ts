import { cumulativeIntegral } from "./integrals.ts";
import { type Column, type TestRun, waterTemperature } from "./run.ts";

/** A driver of the heat content of the tank: one factor times an integral of the columns. */
export interface Driver {
	readonly name: "aperture" | "lossRunning" | "lossAtRest" | "capacityRate" | "loopLoss";
	readonly column: Float64Array; // cumulative heat per unit of the factor, from the first row [N]
}

type Readings = { readonly beam: Column; readonly ambient: Column };

/** The tank as one lump, heated by the sun and cooled by the air, integrated from the first row:
 *  H(t) = H(0) + A_eff·∫G dt − U·∫(T − T_air) dt, the integrals over running spans, and a separate U over spans at rest.
 *  A_eff [m²] is the dish's aperture times its optical factor; U [W/K] while running is that of receiver, loop and tank, at rest that of the tank.
 *  The loss integral uses the readings of the water: their noise averages out, and no noisy readings are differentiated.
 *  Assumes a constant difference between oil and water, which is nearly true for a steady flow, and a small heat capacity of the oil.
 *  Source  Mullick, Kandpal & Kumar, Solar Energy 46 (1991) 139–143 (the same balance, closed form; from memory)
 *  Check   trajectories of the closed form, tests/unit/test-run/trials.test.ts */
export function sunDrivers(
	run: TestRun,
	{ beam, ambient }: Readings,
	running: readonly boolean[],
): readonly Driver[] {
	const drivers: Driver[] = [];
	if (running.includes(true))
		drivers.push(
			{ name: "aperture", column: cumulativeIntegral(run.time, (row) => beam[row]!, running) },
			{ name: "lossRunning", column: loss(run, ambient, running) },
		);
	return [...drivers, ...restDrivers(run, ambient, running)];
}

/** The same with the heat from the temperature rise of the oil: H(t) = H(0) + Ċ·∫(T_out − T_in) dt − U_loop·∫(T_oil − T_air) dt − U_tank·∫(T − T_air) dt.
 *  Ċ [W/K] is the capacity rate of the oil, U_loop the loss of pipes and pump between receiver and tank; the tank loses heat at all times.
 *  Without rows at rest, the loss of the tank cannot be distinguished from that of the loop and is included in it. */
export function oilDrivers(
	run: TestRun,
	{ oilIn, oilOut, ambient }: { readonly oilIn: Column; readonly oilOut: Column; readonly ambient: Column },
	running: readonly boolean[],
): readonly Driver[] {
	const oil = (row: number) => (oilIn[row]! + oilOut[row]!) / 2;
	const drivers: Driver[] = [
		{
			name: "capacityRate",
			column: cumulativeIntegral(run.time, (row) => oilOut[row]! - oilIn[row]!, running),
		},
		{ name: "loopLoss", column: cumulativeIntegral(run.time, (row) => ambient[row]! - oil(row), running) },
	];
	return running.includes(false)
		? [
				...drivers,
				{
					name: "lossAtRest",
					column: loss(
						run,
						ambient,
						running.map(() => true),
					),
				},
			]
		: drivers;
}

function restDrivers(run: TestRun, ambient: Column, running: readonly boolean[]): readonly Driver[] {
	if (!running.includes(false)) return [];
	return [
		{
			name: "lossAtRest",
			column: loss(
				run,
				ambient,
				running.map((ran) => !ran),
			),
		},
	];
}

/** Heat loss per W/K over selected spans [N] [K s], negative because it leaves. */
function loss(run: TestRun, ambient: Column, counts: readonly boolean[]): Float64Array {
	return cumulativeIntegral(run.time, (row) => ambient[row]! - waterTemperature(run, row), counts);
}
