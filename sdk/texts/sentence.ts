import type { Further, Names, WarmUp } from "./codes.ts";
import { ANSWERS, type Language, languageFor } from "./languages.ts";
import { speech, type Units, type Values } from "./speech.ts";

export type { Language, Units };

/** Every language that has a dictionary. */
export const LANGUAGES = Object.keys(ANSWERS) as readonly Language[];

/** What a code belongs to, by the field or schema of the contract. */
export interface Subjects extends Omit<Further, "cautions" | "metals"> {
	readonly cautions: WarmUp["cautions"] & Further["cautions"];
	readonly reasons: WarmUp["reasons"];
	readonly fluids: Names["fluids"];
	readonly insulations: Names["insulations"];
	readonly wallMaterials: Names["plastics"] & Further["metals"];
}

export type Subject = keyof Subjects;
/** Codes of a subject; a newer service may send others, so any text is accepted. */
export type Code<S extends Subject> = keyof Subjects[S] | (string & {});

/** All words of one language, by subject. */
function subjects({ warmUp, names, further }: (typeof ANSWERS)[Language]): Subjects {
	return {
		...further,
		cautions: { ...warmUp.cautions, ...further.cautions },
		reasons: warmUp.reasons,
		fluids: names.fluids,
		insulations: names.insulations,
		wallMaterials: { ...names.plastics, ...further.metals },
	};
}

/** A code of the service as a sentence or name in a reader's language. Undefined where this package has no words for the code: a newer
 *  service sent it, and its English `message` remains.
 *  @param language    such as "es" or "es-MX"; English where there is no dictionary
 *  @param parameters  as the service sent them beside the code; of a fault, its `{ field }`
 *  @param units       in which its numbers are written */
export function sentence<S extends Subject>(
	language: string,
	subject: S,
	code: Code<S>,
	parameters: Values = {},
	units: Units = "metric",
): string | undefined {
	const spoken = languageFor(language);
	const texts: Readonly<Record<string, string>> = subjects(ANSWERS[spoken])[subject];
	const template = Object.hasOwn(texts, code) ? texts[code as string] : undefined;
	const { say } = speech(spoken, units, ANSWERS[spoken].names, ANSWERS.en.names);
	return template === undefined ? undefined : say(template, parameters);
}
