import { once } from "node:events";
import { text } from "node:stream/consumers";
import { bundled } from "./bundled.ts";
import type { Fate, Orders } from "./open-loop.ts";
import { CLIENT_CORE, pinned } from "./spawned.ts";

let client: Promise<string> | undefined;

/** Sends by the clock from a process of its own on the client's core; the fate of each request, in the order sent. */
export async function paced(orders: Orders): Promise<readonly Fate[]> {
	client ??= bundled("open-loop.ts");
	const child = pinned(CLIENT_CORE, process.execPath, [await client, JSON.stringify(orders)], {}, [
		"ignore",
		"pipe",
		"inherit",
	]);
	const [output] = await Promise.all([text(child.stdout!), once(child, "exit")]);
	if (child.exitCode !== 0) throw new Error(`the client ended with ${child.exitCode}`);
	return JSON.parse(output) as readonly Fate[];
}
