import type { IncomingMessage, Server, ServerResponse } from "node:http";
import type { Backlog } from "../operations/backlog.ts";

const COMPLETE = 10; // [-] time for reading a complete answer, relative to that for reading any of it

/** Counts bytes that are written but not yet read by clients, and closes the connection of a client that reads nothing, or too slowly.
 *  Answers that the socket accepts at once, as nearly all are, cost nothing here.
 *  @param time  time within which a client must read something [ms] */
export function watchUnread(server: Server, backlog: Backlog, time: number): void {
	const held = new WeakSet<ServerResponse>();
	const hold = (response: ServerResponse): void => {
		const bytes = response.writableLength;
		if (bytes === 0 || held.has(response)) return;
		held.add(response);
		const { socket } = response.req;
		backlog.hold(bytes);
		socket.setTimeout(time); // restarts whenever some of it is read
		const late = setTimeout(() => socket.destroy(), COMPLETE * time).unref();
		let over = false;
		const release = () => {
			if (over) return;
			over = true;
			clearTimeout(late);
			socket.off("close", release);
			backlog.release(bytes);
		};
		response.once("close", release);
		socket.once("close", release); // for a pipelined answer, whose response gets no event
	};
	function written(this: ServerResponse): void {
		hold(this);
	}
	server.prependListener("request", (_request: IncomingMessage, response: ServerResponse) => {
		response.on("prefinish", written);
		if (!response.socket) countedAtEnd(response, hold); // pipelined behind another answer, and written after it
	});
}

/** Counts an answer as soon as it is complete. */
function countedAtEnd(response: ServerResponse, hold: (response: ServerResponse) => void): void {
	const end = response.end.bind(response) as (...chunks: unknown[]) => ServerResponse;
	response.end = ((...chunks: unknown[]) => {
		end(...chunks);
		hold(response);
		return response;
	}) as ServerResponse["end"];
}
