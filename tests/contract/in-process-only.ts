const UNREAD =
	"a server may cut the line on an upload that nobody reads to its end, before its answer is seen";
const LENGTH = "fetch sends no Content-Length but the right one";

/** The contract tests that cannot hold for a service elsewhere, each with its reason; all others do. */
export const IN_PROCESS_ONLY: ReadonlyMap<string, string> = new Map([
	["getMeta plain is answered as the contract shows", "a deployment has limits of its own"],
	["states the body limit that is in force", UNREAD],
	["refuses two megabytes", UNREAD],
	["refuses two megabytes of unstated length", UNREAD],
	["over the limit is refused by its stated length, or counted when none is stated", LENGTH],
	["with a length that is no number is refused", LENGTH],
	["gives the index as JSON to a program and as a page to a browser", "a deployment may have no pages"],
	["a caller who leaves in the middle of a body is told from a failure of ours", "who left hears no answer"],
	["counts a body sent in chunks", "it looks at Node's server with the app behind it"],
]);
