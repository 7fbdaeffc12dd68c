import type { Fluid } from "../fluids/fluid.ts";
import { type ReceiverBalance, receiverBalance } from "./balance.ts";
import { cavityConvectedKoenigMarvin } from "./cavity.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { receiverFilmOutsideRange } from "./film.ts";
import { hasCavity, hasTube, type Receiver } from "./receiver.ts";

/** Combinations of fluid temperature, wind and tilt at which a receiver is evaluated. */
export interface SurveyPlan {
	readonly fluid: Fluid;
	readonly flow: number; // [m³/s]
	readonly absorbed: number; // [W]
	readonly ambient: number; // [K]
	readonly pressure: number; // of the air [Pa]
	readonly fluidTemperatures: readonly number[]; // mean in the tube; for an efficiency line that of the leaving fluid [K]
	readonly winds: readonly number[]; // [m/s]
	readonly altitudes: readonly number[]; // of the sun; angle by which the receiver faces below the horizontal [rad]
}

/** One combination. */
export interface SurveyRow {
	readonly fluidTemperature: number; // [K]
	readonly leavingTemperature: number; // of the fluid [K]
	readonly conditions: ReceiverConditions;
	readonly balance: ReceiverBalance;
	readonly convectedByOtherModel: number | undefined; // of a cavity at the same wall temperature, by Koenig & Marvin [W]
	readonly filmOutsideRange: boolean;
}

/** The rows of a survey, ordered by wind, then tilt, then temperature. */
export function receiverSurvey(receiver: Receiver, plan: SurveyPlan): readonly SurveyRow[] {
	return plan.winds.flatMap((wind) =>
		plan.altitudes.flatMap((altitude) =>
			plan.fluidTemperatures.map((temperature) => surveyRow(receiver, plan, temperature, wind, altitude)),
		),
	);
}

function surveyRow(
	receiver: Receiver,
	{ fluid, flow, absorbed, ambient, pressure }: SurveyPlan,
	fluidTemperature: number,
	wind: number,
	altitude: number,
): SurveyRow {
	const surroundings = { ambient, pressure, wind, altitude };
	const balance = receiverBalance(receiver, { ...surroundings, fluid, fluidTemperature, flow, absorbed });
	const conditions = { ...surroundings, wallTemperature: balance.wallTemperature };
	const capacityRate = flow * fluid.density(fluidTemperature) * fluid.heatCapacity(fluidTemperature);
	return {
		fluidTemperature,
		leavingTemperature: hasTube(receiver)
			? fluidTemperature + balance.useful / (2 * capacityRate)
			: fluidTemperature,
		conditions,
		balance,
		convectedByOtherModel: hasCavity(receiver)
			? cavityConvectedKoenigMarvin(receiver, conditions)
			: undefined,
		filmOutsideRange: hasTube(receiver) && receiverFilmOutsideRange(receiver, fluid, fluidTemperature, flow),
	};
}
