const FRAMES = 8; // enough to locate the error; the rest is the same for every request

/** Log line of a server error: its name and location, without its message, which could repeat request data. */
export function failureLine(error: unknown): { readonly error: string; readonly at?: readonly string[] } {
	if (!(error instanceof Error)) return { error: typeof error };
	const { name, message, stack = "" } = error;
	const frames = stack
		.slice(stack.indexOf(message) + message.length) // a multi-line message could look like frames
		.split("\n")
		.filter((line) => line.startsWith("    at "));
	return { error: name, at: frames.slice(0, FRAMES).map((line) => line.slice(7)) };
}
