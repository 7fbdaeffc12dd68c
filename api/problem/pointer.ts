import type { DomainError } from "../../src/index.ts";

/** Part of a body that a quantity of the core hangs on: of several fields together, so that none of them alone is at fault.
 *  Every operation that works with a part calls it so. */
const PART_OF: Readonly<Record<string, string>> = {
	"light on the absorber": "/receiver",
	"temperature of the absorber": "/receiver",
	"film of the absorber's fluid": "/receiver",
	"diameter ratio of the helix": "/receiver", // of the tank's coil a rule says it first
};

/** Where the core's refusal lies in a request, as a JSON pointer: as it says itself, or by the quantity that it names;
 *  "" for the whole request. */
export function pointerOf({ details: { pointer, name } }: DomainError): string {
	if (typeof pointer === "string") return pointer;
	return (typeof name === "string" && Object.hasOwn(PART_OF, name) && PART_OF[name]) || "";
}
