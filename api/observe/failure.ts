const FRAMES = 8; // tell where it was; the rest is the way of every request

/** What an operator may read of a failure: what kind of error it was and where, since its message could repeat what a caller sent. */
export function failureLine(error: unknown): { readonly error: string; readonly at?: readonly string[] } {
	if (!(error instanceof Error)) return { error: typeof error };
	const { name, message, stack = "" } = error;
	const frames = stack
		.slice(stack.indexOf(message) + message.length) // a message of several lines could look like frames
		.split("\n")
		.filter((line) => line.startsWith("    at "));
	return { error: name, at: frames.slice(0, FRAMES).map((line) => line.slice(7)) };
}
