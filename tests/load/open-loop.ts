/** A client that sends by the clock, whatever comes of it: so a slow answer delays no other request, and the wait of each
 *  counts from when it was due. A process of its own: it reads its orders from its argument and tells each request's fate. */
import { Agent, request } from "node:http";
import { varied } from "./bodies.ts";

/** What to send, and when. */
export interface Orders {
	readonly url: string;
	readonly post?: string; // the body of a POST, its # made into a number that differs from request to request
	readonly perSecond: number;
	readonly seconds: number;
}

/** One request's fate. Times are from the run's beginning [s] and from when the request was due [ms]. */
export interface Fate {
	readonly due: number;
	readonly wait: number;
	readonly status: number; // 0 where no answer came
	readonly retryAfter: boolean;
}

const PATIENCE = 30_000; // [ms]
const agent = new Agent({ keepAlive: true });

function sent({ url, post }: Orders, nth: number, due: number, begun: number): Promise<Fate> {
	const body = post && varied(post, nth);
	const headers = body === undefined ? {} : jsonHeaders(body);
	const fate = (status: number, retryAfter: boolean): Fate => ({
		due: due / 1000,
		wait: performance.now() - begun - due,
		status,
		retryAfter,
	});
	return new Promise((resolve) => {
		const lost = () => resolve(fate(0, false));
		const asked = request(
			url,
			{ agent, method: body === undefined ? "GET" : "POST", headers, timeout: PATIENCE },
			(answer) => {
				answer.resume().on("error", lost);
				answer.on("end", () =>
					resolve(fate(answer.statusCode ?? 0, answer.headers["retry-after"] !== undefined)),
				);
			},
		);
		asked.on("error", lost).on("timeout", () => asked.destroy());
		asked.end(body);
	});
}

const jsonHeaders = (body: string) => ({
	"Content-Type": "application/json",
	"Content-Length": Buffer.byteLength(body),
});

async function run(orders: Orders): Promise<readonly Fate[]> {
	const step = 1000 / orders.perSecond;
	const count = Math.round(orders.seconds * orders.perSecond);
	const fates: Promise<Fate>[] = [];
	const begun = performance.now();
	await new Promise<void>((done) => {
		const tick = () => {
			const passed = performance.now() - begun;
			while (fates.length < count && fates.length * step <= passed)
				fates.push(sent(orders, fates.length, fates.length * step, begun));
			if (fates.length < count) setImmediate(tick);
			else done();
		};
		tick();
	});
	return Promise.all(fates);
}

const fates = await run(JSON.parse(process.argv[2]!) as Orders);
process.stdout.write(JSON.stringify(fates), () => process.exit(0));
