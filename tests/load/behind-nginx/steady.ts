import { ask, type Question } from "./ask.ts";

/** One request of steady traffic and what came of it. Times are from the traffic's beginning [ms]. */
export interface Fate {
	readonly name: string;
	readonly requestId: string;
	readonly sent: number;
	readonly ended: number;
	readonly status: number; // 0 where no answer came
	readonly words: string; // what went wrong
}

/** Traffic that goes on until it is told to stop, each stream of it by the clock and whatever comes of earlier requests. */
export interface Traffic {
	readonly now: () => number;
	/** Sends one more, beside the streams. */
	readonly also: (question: Question) => Promise<Fate>;
	readonly stop: () => Promise<readonly Fate[]>;
}

export interface Stream {
	readonly perSecond: number;
	readonly next: (nth: number) => Question;
}

export function steady(port: number, streams: readonly Stream[]): Traffic {
	const begun = performance.now();
	const now = () => performance.now() - begun;
	const fates: Promise<Fate>[] = [];
	const send = (question: Question): Promise<Fate> => {
		const sent = now();
		const requestId = `steady-${fates.length}`;
		const tell = (status: number, words: string): Fate => {
			return { name: question.name, requestId, sent, ended: now(), status, words };
		};
		const headers = { ...question.headers, "X-Request-Id": requestId };
		const fate = ask(port, { ...question, headers }).then(
			({ status, body }) => tell(status, status === 200 ? "" : body.toString("utf8", 0, 300)),
			(error: Error) => tell(0, error.message),
		);
		fates.push(fate);
		return fate;
	};
	const clocks = streams.map(({ perSecond, next }) => {
		let nth = 0;
		return setInterval(() => send(next(nth++)), 1000 / perSecond);
	});
	return {
		now,
		also: send,
		stop: () => {
			for (const clock of clocks) clearInterval(clock);
			return Promise.all(fates);
		},
	};
}
