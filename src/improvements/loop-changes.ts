import { coilFits } from "../coil/geometry.ts";
import { type Insulation, insulationMaterial } from "../heat/insulation.ts";
import type { Loop, Pipe } from "../loop/loop.ts";
import type { Plant } from "../plant/plant.ts";
import { hasTube } from "../receiver/receiver.ts";
import { standsOutdoors } from "../tank/tank.ts";
import type { DayCase } from "../uncertainty/day-case.ts";
import type { Changed } from "./changed.ts";

const NO_LONGER = 1.001; // a coil within this ratio of the longest that fits cannot be extended

function withLoop(of: DayCase, change: Partial<Loop>): DayCase {
	return { ...of, plant: { ...of.plant, loop: { ...of.plant.loop, ...change } } };
}

const thicker = (insulation: Insulation, by: number): Insulation => ({
	...insulation,
	thickness: insulation.thickness + by,
});

const withThicker = (pipe: Pipe, by: number): Pipe => ({ ...pipe, insulation: thicker(pipe.insulation, by) });

export function insulatedSupply(of: DayCase, by: number): Changed {
	return withLoop(of, { supply: withThicker(of.plant.loop.supply, by) });
}

export function insulatedReturn(of: DayCase, by: number): Changed {
	return withLoop(of, { return: withThicker(of.plant.loop.return, by) });
}

export function insulatedPump(of: DayCase, less: number): Changed {
	const { pump } = of.plant.loop;
	if (pump.casingLossCoefficient === 0 || less === 0) return "alreadySo";
	return withLoop(of, {
		pump: { ...pump, casingLossCoefficient: pump.casingLossCoefficient * (1 - less) },
	});
}

export function insulatedTank(of: DayCase, by: number): Changed {
	const { tank } = of.plant;
	return {
		...of,
		plant: { ...of.plant, tank: { ...tank, insulation: thicker(tank.insulation, by) } },
	};
}

export function fasterPump(of: DayCase, more: number): Changed {
	const { pump } = of.plant.loop;
	return withLoop(of, { pump: { ...pump, flow: pump.flow * (1 + more) } });
}

export function shorterPipes(of: DayCase, less: number): Changed {
	const { supply, return: back } = of.plant.loop;
	return withLoop(of, {
		supply: { ...supply, length: supply.length * (1 - less) },
		return: { ...back, length: back.length * (1 - less) },
	});
}

/** A longer coil, as far as it fits into the tank. */
export function longerCoil(of: DayCase, more: number): Changed {
	const { coil, tank } = of.plant;
	const wanted = { ...coil, length: coil.length * (1 + more) };
	const fit = coilFits(wanted, tank);
	if (fit.outcome === "tooWide") return "noRoom";
	const length = Math.min(wanted.length, fit.longest);
	return length > coil.length * NO_LONGER
		? { ...of, plant: { ...of.plant, coil: { ...coil, length } } }
		: "noRoom";
}

/** Whether any outdoor insulation is wet. */
export function isWet({ plant }: DayCase): boolean {
	return outdoorInsulation(plant).some(({ thickness, moisture }) => thickness > 0 && moisture > 0);
}

function outdoorInsulation({ loop, receiver, tank }: Plant): readonly Insulation[] {
	return [
		loop.supply.insulation,
		loop.return.insulation,
		...(hasTube(receiver) ? [receiver.insulation] : []),
		...(standsOutdoors(tank.surroundings) ? [tank.insulation] : []),
	];
}

/** The same plant with a given moisture of all outdoor insulation, within the range of each material; 0 is dry. */
export function withMoisture(of: DayCase, moisture: number): DayCase {
	const { plant } = of;
	const { loop, receiver, tank } = plant;
	const damp = (insulation: Insulation): Insulation => ({
		...insulation,
		moisture: Math.min(moisture, insulationMaterial(insulation.material).mostMoisture),
	});
	return {
		...of,
		plant: {
			...plant,
			loop: {
				...loop,
				supply: { ...loop.supply, insulation: damp(loop.supply.insulation) },
				return: { ...loop.return, insulation: damp(loop.return.insulation) },
			},
			receiver: hasTube(receiver) ? { ...receiver, insulation: damp(receiver.insulation) } : receiver,
			tank: standsOutdoors(tank.surroundings) ? { ...tank, insulation: damp(tank.insulation) } : tank,
		},
	};
}
