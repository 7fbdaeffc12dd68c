import { ICE_POINT } from "../constants.ts";
import { HELICAL_FILM } from "../heat/methods.ts";
import type { Method } from "../methods.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { receiverMethods } from "./methods.ts";
import { hasTube, type Receiver } from "./receiver.ts";
import type { SurveyRow } from "./survey.ts";

const OTHER_CAVITY_DATA = [550 + ICE_POINT, 900 + ICE_POINT] as const; // [K] wall temperatures of Koenig & Marvin's data (value from memory)

/** Methods behind a survey and its stagnation temperature, each with a flag where a row is outside its published range.
 *  @param stagnation  conditions of the receiver without flow */
export function surveyMethods(
	receiver: Receiver,
	rows: readonly SurveyRow[],
	stagnation: ReceiverConditions,
): readonly Method[] {
	const [first, ...rest] = rows.map(({ conditions }) => conditions);
	if (first === undefined) return [];
	const losses = receiverMethods(receiver, [first, ...rest]);
	if (!hasTube(receiver)) return losses;
	return [
		...losses,
		...(rows.some(({ convectedByOtherModel }) => convectedByOtherModel !== undefined)
			? [otherCavityMethod(rows)]
			: []),
		{
			name: "Film inside the receiver's tube",
			...HELICAL_FILM,
			outsideRange: rows.some(({ filmOutsideRange }) => filmOutsideRange),
		},
		stagnationMethod(receiverMethods(receiver, [stagnation])),
	];
}

/** The receiver's own methods, used at its wall temperature without flow. */
function stagnationMethod(methods: readonly Method[]): Method {
	return {
		name: "Receiver: stagnation by the same losses",
		source: methods.flatMap(({ source = [] }) => source).join("; "),
		confirmed: methods.every(({ confirmed }) => confirmed),
		outsideRange: methods.some(({ outsideRange }) => outsideRange),
	};
}

function otherCavityMethod(rows: readonly SurveyRow[]): Method {
	const [least, most] = OTHER_CAVITY_DATA;
	return {
		name: "Receiver: free convection from the cavity, second model",
		source: "Koenig & Marvin, DOE/EG77-C-04-3985, 1981",
		confirmed: false,
		outsideRange: rows.some(
			({ conditions: { wallTemperature } }) => !(wallTemperature >= least && wallTemperature <= most),
		),
	};
}
