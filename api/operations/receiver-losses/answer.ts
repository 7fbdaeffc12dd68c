import type { z } from "@hono/zod-openapi";
import {
	type Fluid,
	fittedLine,
	hasCavity,
	hasTube,
	type Receiver,
	receiverLosses,
	type SurveyRow,
	totalReceiverLoss,
} from "../../../src/index.ts";
import { wireFluidLimit } from "../../parts/fluid.ts";
import { fromSi } from "../../wire/units.ts";
import type { LitReceiver, Standstill } from "./plan.ts";
import type { ReceiverLossesResponse } from "./response.ts";

type Answer = z.input<typeof ReceiverLossesResponse>;

export function wireSize(receiver: Receiver): Pick<Answer, "size"> {
	if (!hasTube(receiver)) return {};
	return {
		size: {
			apertureDiameterM: receiver.apertureDiameter,
			...(hasCavity(receiver) && { innerDiameterM: receiver.innerDiameter, depthM: receiver.depth }),
			tubeLengthM: receiver.tube.length,
			tubeInnerDiameterMm: fromSi.millimetres(receiver.tube.innerDiameter),
		},
	};
}

export function wireReceiverLight({ area, entering, absorbed }: LitReceiver, beam: number): Answer["light"] {
	return {
		...(area !== undefined && { beamOnApertureW: beam * area }),
		...(entering !== undefined && { enteringW: entering, reflectedW: entering - absorbed }),
		absorbedW: absorbed,
	};
}

/** @param basis  power that efficiencies refer to [W]     @param beam  [W/m²] */
export function wireTable(rows: readonly SurveyRow[], basis: number, beam: number): Answer["table"] {
	const column = (of: (row: SurveyRow) => number) => rows.map(of);
	return {
		oilTemperatureC: column((row) => fromSi.celsius(row.fluidTemperature)),
		windMPerS: column((row) => row.conditions.wind),
		tiltDeg: column((row) => fromSi.degrees(row.conditions.altitude)),
		usefulW: column((row) => row.balance.useful),
		radiatedW: column((row) => row.balance.losses.radiated),
		convectedW: column((row) => row.balance.losses.convected),
		conductedW: column((row) => row.balance.losses.conducted),
		unresolvedW: column((row) => row.balance.losses.unresolved),
		lossW: column((row) => totalReceiverLoss(row.balance.losses)),
		efficiency: column((row) => row.balance.useful / basis),
		reducedDifferenceM2KPerW: column((row) => fluidOverAir(row) / beam),
		wallTemperatureC: column((row) => fromSi.celsius(row.balance.wallTemperature)),
		filmTemperatureC: column((row) => fromSi.celsius(row.balance.filmTemperature)),
		leavingTemperatureC: column((row) => fromSi.celsius(row.leavingTemperature)),
	};
}

export function worstResidual(rows: readonly SurveyRow[], absorbed: number): number {
	const residuals = rows.map(({ balance }) => absorbed - balance.useful - totalReceiverLoss(balance.losses));
	return residuals.reduce((worst, one) => (Math.abs(one) > Math.abs(worst) ? one : worst), 0);
}

/** One line for each wind and tilt, whose rows form a block. */
export function wireLines(
	rows: readonly SurveyRow[],
	blockLength: number,
	basis: number,
	area: number | undefined,
): Answer["efficiencyLines"] {
	const blocks = Array.from({ length: rows.length / blockLength }, (_, i) =>
		rows.slice(i * blockLength, (i + 1) * blockLength),
	);
	return blocks.flatMap((block) => {
		const useful = block.map(({ balance }) => balance.useful);
		const line = fittedLine(block.map(fluidOverAir), useful, basis);
		if (line === undefined) return [];
		const { wind, altitude } = block[0]!.conditions;
		return [
			{
				windMPerS: wind,
				tiltDeg: fromSi.degrees(altitude),
				zeroLossEfficiency: line.zeroLossEfficiency,
				lossCoefficientWPerK: line.lossCoefficient,
				...(area !== undefined && { lossCoefficientWPerM2K: line.lossCoefficient / area }),
				worstDeviation: line.worstDeviation,
			},
		];
	});
}

const fluidOverAir = ({ fluidTemperature, conditions }: SurveyRow) => fluidTemperature - conditions.ambient;

export function wireConvectionRange(rows: readonly SurveyRow[]): Pick<Answer, "convectionRange"> {
	const other = rows.flatMap(({ convectedByOtherModel }) => convectedByOtherModel ?? []);
	if (other.length < rows.length) return {};
	const own = rows.map(({ balance }) => balance.losses.convected);
	const differences = own.map((convected, i) => Math.abs(convected - other[i]!));
	const shares = rows.map(({ balance }, i) => {
		const loss = Math.abs(totalReceiverLoss(balance.losses));
		return loss > 0 ? differences[i]! / loss : 0;
	});
	return {
		convectionRange: {
			byStineMcDonaldW: own,
			byKoenigMarvinW: other,
			greatestDifferenceW: Math.max(...differences),
			greatestShareOfLoss: Math.max(...shares),
		},
	};
}

const STAGNATION_ERROR = 0.15; // of the rise above air temperature; common practice, no source

export function wireStagnation(
	receiver: Receiver,
	{ absorbed, conditions }: Standstill,
	fluid: Fluid,
): Answer["stagnation"] {
	const { wallTemperature, ambient } = conditions;
	const rise = wallTemperature - ambient;
	const losses = receiverLosses(receiver, conditions);
	const limits = [
		["bulkLimit", fluid.limits.bulk.temperature],
		["filmLimit", fluid.limits.film.temperature],
		["flashPoint", fluid.limits.flash?.temperature ?? Number.POSITIVE_INFINITY],
	] as const;
	return {
		absorbedW: absorbed,
		wallTemperatureC: fromSi.celsius(wallTemperature),
		lowC: fromSi.celsius(ambient + rise * (1 - STAGNATION_ERROR)),
		highC: fromSi.celsius(ambient + rise * (1 + STAGNATION_ERROR)),
		radiatedW: losses.radiated,
		convectedW: losses.convected,
		conductedW: losses.conducted,
		unresolvedW: losses.unresolved,
		passes: limits.filter(([, limit]) => wallTemperature > limit).map(([name]) => name),
	};
}

export function wireFluidLimits({ limits }: Fluid): Answer["fluidLimits"] {
	return {
		bulkLimit: wireFluidLimit(limits.bulk),
		filmLimit: wireFluidLimit(limits.film),
		...(limits.flash && { flashPoint: wireFluidLimit(limits.flash) }),
	};
}
