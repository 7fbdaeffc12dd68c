import type { IncomingMessage, Server, ServerResponse } from "node:http";
import type { Backlog } from "../operations/backlog.ts";

const WHOLE = 10; // times as long as a caller may take nothing, he may take for all of it

/** Counts what is written and not yet taken by callers, and closes the connection of one who takes nothing, or too slowly.
 *  What a socket takes at once, as nearly every answer, costs nothing here.
 *  @param time  within which a caller must take something [ms] */
export function watchUnread(server: Server, backlog: Backlog, time: number): void {
	const held = new WeakSet<ServerResponse>();
	const hold = (response: ServerResponse): void => {
		const bytes = response.writableLength;
		if (bytes === 0 || held.has(response)) return;
		held.add(response);
		const { socket } = response.req;
		backlog.hold(bytes);
		socket.setTimeout(time); // starts anew whenever some of it is taken
		const late = setTimeout(() => socket.destroy(), WHOLE * time).unref();
		let over = false;
		const release = () => {
			if (over) return;
			over = true;
			clearTimeout(late);
			socket.off("close", release);
			backlog.release(bytes);
		};
		response.once("close", release);
		socket.once("close", release); // of an answer that waits behind another, which hears of nothing
	};
	function written(this: ServerResponse): void {
		hold(this);
	}
	server.prependListener("request", (_request: IncomingMessage, response: ServerResponse) => {
		response.on("prefinish", written);
		if (!response.socket) countedAtEnd(response, hold); // behind another on the same connection: not written before that one is
	});
}

/** Has an answer counted as soon as it is there. */
function countedAtEnd(response: ServerResponse, hold: (response: ServerResponse) => void): void {
	const end = response.end.bind(response) as (...given: unknown[]) => ServerResponse;
	response.end = ((...given: unknown[]) => {
		end(...given);
		hold(response);
		return response;
	}) as ServerResponse["end"];
}
