import { once } from "node:events";
import { writeFileSync } from "node:fs";
import { text } from "node:stream/consumers";
import { scratch } from "./bundled.ts";
import { CLIENT_CORE, pinned, type Spawned } from "./spawned.ts";

/** What a server does at most. */
export interface Ceiling {
	readonly perSecond: number; // requests
	readonly perCpuSecond: number; // requests for each second that the server's threads were running
}

/** Asks as fast as the server answers, from the client's core.
 *  @param post         the body, where it is a POST
 *  @param seconds      how long
 *  @param connections  requests in flight */
export async function ceiling(
	server: Spawned,
	path: string,
	post: string | undefined,
	seconds: number,
	connections: number,
): Promise<Ceiling> {
	const args = ["-t1", `-c${connections}`, `-d${seconds}s`];
	if (post !== undefined) args.push("-s", script(post));
	const before = server.cpu();
	const wrk = pinned(CLIENT_CORE, "wrk", [...args, server.url + path], {}, ["ignore", "pipe", "inherit"]);
	const [output] = await Promise.all([text(wrk.stdout!), once(wrk, "exit")]);
	const used = server.cpu() - before;
	const requests = Number(/(\d+) requests in/.exec(output)?.[1]);
	const perSecond = Number(/Requests\/sec:\s+([\d.]+)/.exec(output)?.[1]);
	if (!(requests > 0)) throw new Error(`wrk says nothing of ${path}: is it installed?\n${output}`);
	const refused = /(?:Non-2xx|Socket errors).*/.exec(output)?.[0];
	if (refused) throw new Error(`${path} under load: ${refused}`);
	return { perSecond, perCpuSecond: requests / used };
}

/** A wrk script that posts one body. */
function script(body: string): string {
	const file = scratch("post.lua");
	const quoted = `[==[${body}]==]`;
	writeFileSync(
		file,
		`wrk.method = "POST"\nwrk.headers["Content-Type"] = "application/json"\nwrk.body = ${quoted}\n`,
	);
	return file;
}
