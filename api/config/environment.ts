import { z } from "@hono/zod-openapi";

export type Environment = Readonly<Record<string, string | undefined>>;

const refusal = (words: string) => ({
	error: ({ input }: { readonly input?: unknown }) => `must be ${words}, not "${input}"`,
});

/** A variable that holds a whole number. */
export function wholeNumber(least: number, most: number) {
	const refused = refusal(`a whole number from ${least} to ${most}`);
	return z
		.string()
		.regex(/^\d{1,9}$/, refused)
		.transform(Number)
		.pipe(z.number().min(least, refused).max(most, refused))
		.optional();
}

/** A variable that holds a text of a form.
 *  @param words  the form in words: `HOST must be …` */
export const textLike = (form: RegExp, words: string) => z.string().regex(form, refusal(words)).optional();

/** A variable that holds one of a few words. */
export const oneOf = <const Words extends readonly [string, ...string[]]>(words: Words) =>
	z.enum(words, refusal(`one of ${words.join(", ")}`)).optional();

/** Whether requests without a key are refused. */
export const KEYS_REQUIRED = z.enum(["true", "false"], refusal("true or false")).optional();

/** An environment's variables as a schema reads them. Throws one sentence that names every fault.
 *  @param keys  the variable that brings the keys, without which KEYS_REQUIRED has no meaning */
export function variablesIn<Shape extends z.ZodRawShape>(
	schema: z.ZodObject<Shape>,
	environment: Environment,
	keys: string,
): z.output<z.ZodObject<Shape>> {
	const read = schema.safeParse(environment);
	const faults = (read.error?.issues ?? []).map(({ path, message }) => `${String(path[0])} ${message}`);
	if (environment.KEYS_REQUIRED === "true" && environment[keys] === undefined)
		faults.push(`KEYS_REQUIRED needs ${keys}, which holds the keys`);
	if (read.success && faults.length === 0) return read.data;
	throw new Error(faults.join("; "));
}
