import { accumulated } from "./accumulate.ts";
import { type Column, type TestRun, waterTemperature } from "./run.ts";

/** A driver of the tank's heat content: one factor times a sum that the columns give. */
export interface Driver {
	readonly name: "aperture" | "lossRunning" | "lossAtRest" | "capacityRate" | "loopLoss";
	readonly column: Float64Array; // its heat per unit of the factor, from the first row on [N]
}

type Readings = { readonly beam: Column; readonly ambient: Column };

/** The tank as one lump that the sun heats and the air cools, integrated from the first row:
 *  H(t) = H(0) + A_eff·∫G dt − U·∫(T − T_air) dt, the integrals over spans that ran, and U apart over spans at rest.
 *  A_eff [m²] is the dish's aperture times its optical factor; U [W/K] while running is that of receiver, loop and tank, at rest the tank's.
 *  The water's own readings stand in the integral of its loss: their noise averages out there, so nothing noisy is differenced.
 *  Assumes the loop's oil stays as far above the water, which a steady flow nearly does, and holds little heat beside the tank.
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
			{ name: "aperture", column: accumulated(run.time, (row) => beam[row]!, running) },
			{ name: "lossRunning", column: loss(run, ambient, running) },
		);
	return [...drivers, ...restDrivers(run, ambient, running)];
}

/** The same with the heat from the oil's own rise: H(t) = H(0) + Ċ·∫(T_out − T_in) dt − U_loop·∫(T_oil − T_air) dt − U_tank·∫(T − T_air) dt.
 *  Ċ [W/K] is the oil's capacity rate, U_loop the loss of pipes and pump between receiver and tank; the tank loses at all times.
 *  Without rows at rest the tank's loss cannot be told from the loop's and is counted with it. */
export function oilDrivers(
	run: TestRun,
	{ oilIn, oilOut, ambient }: { readonly oilIn: Column; readonly oilOut: Column; readonly ambient: Column },
	running: readonly boolean[],
): readonly Driver[] {
	const oil = (row: number) => (oilIn[row]! + oilOut[row]!) / 2;
	const drivers: Driver[] = [
		{
			name: "capacityRate",
			column: accumulated(run.time, (row) => oilOut[row]! - oilIn[row]!, running),
		},
		{ name: "loopLoss", column: accumulated(run.time, (row) => ambient[row]! - oil(row), running) },
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

/** Heat lost per W/K over the spans that count [N] [K s], negative as it leaves. */
function loss(run: TestRun, ambient: Column, counts: readonly boolean[]): Float64Array {
	return accumulated(run.time, (row) => ambient[row]! - waterTemperature(run, row), counts);
}
