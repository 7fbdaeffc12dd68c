/** What an operator may read of a failure: what kind of error it was and where, since its message could repeat what a caller sent. */
export function failureLine(error: unknown): { readonly error: string; readonly at?: readonly string[] } {
	if (!(error instanceof Error)) return { error: typeof error };
	const frames = (error.stack ?? "").split("\n").filter((line) => line.startsWith("    at "));
	return { error: error.name, at: frames.slice(0, 8).map((line) => line.trim().slice(3)) };
}
