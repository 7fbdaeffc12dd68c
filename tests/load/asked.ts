import { type Agent, request } from "node:http";

/** One request. */
export interface Question {
	readonly method: string;
	readonly path: string;
	readonly type?: string; // of the body; JSON unless given
	readonly body?: string;
	readonly alone?: true; // on a connection of its own, closed behind it
	readonly leaveAfter?: number; // [ms] when the client goes away; it stays for the answer unless given
}

/** What became of it. */
export interface Outcome {
	readonly status: number; // 0 where no answer came
	readonly sent: number; // when the last of it was handed to the system [ms]; NaN where it never was
	readonly text: string; // where no answer came, why
}

/** Asks over a connection of the agent, and waits for the whole answer or the lack of one. Never rejects. */
export function asked(url: string, question: Question, agent: Agent): Promise<Outcome> {
	const { method, path, type = "application/json", body, alone, leaveAfter } = question;
	const headers =
		body === undefined ? {} : { "Content-Type": type, "Content-Length": Buffer.byteLength(body) };
	return new Promise((resolve) => {
		let sent = Number.NaN;
		const lost = (error?: Error) => resolve({ status: 0, sent, text: error?.message ?? "closed" });
		const asking = request(url + path, { agent: alone ? false : agent, method, headers }, (answer) => {
			let text = "";
			answer.setEncoding("utf8").on("data", (part: string) => (text += part));
			answer.on("end", () => resolve({ status: answer.statusCode ?? 0, sent, text }));
			answer.on("error", lost).on("close", () => lost());
		});
		asking.on("finish", () => (sent = performance.now()));
		asking
			.on("error", lost)
			.on("close", () => lost())
			.end(body);
		if (leaveAfter !== undefined) setTimeout(() => asking.destroy(), leaveAfter);
	});
}
