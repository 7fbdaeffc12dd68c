/** Cost of the optics of a dish and the losses of a receiver, HTTP edge included, against 50 000 sun positions in the same
 *  process: with what is asked when nothing is said, and with the most that may be asked. */
import { createApp } from "../../api/app.ts";
import { LIMITS } from "../../api/config/limits.ts";
import { type Measured, medianTime, report, yardstick } from "./yardstick.ts";

const app = createApp({ indexPage: undefined, onFailure: console.error });
const dish = { diameterM: 1.8, focalLengthM: 0.675 };
const evenly = (from: number, to: number, count: number) =>
	Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
const most = LIMITS.receiverStates.value;

/** Rows as many as may be asked, of each kind of receiver. */
const full = (kind: string) => ({
	dish,
	receiver: { kind },
	oilTemperatureC: evenly(20, 280, most / 25),
	windMPerS: evenly(0, 12, 5),
	tiltDeg: evenly(0, 90, 5),
});

const PART = 0.13;
const CURVE = 0.7;
const jobs: readonly (readonly [name: string, path: string, body: object, limit: number])[] = [
	["optics", "/v1/dish/optics", { dish }, PART],
	[
		"optics, off axis",
		"/v1/dish/optics",
		{ dish: { kind: "offsetPolar", mirrorAreaM2: 8 }, latitude: 25 },
		PART,
	],
	[
		"optics, longest curve",
		"/v1/dish/optics",
		{ dish, curveApertureDiameterM: evenly(0.01, 0.5, LIMITS.curvePoints.value) },
		CURVE,
	],
	["losses", "/v1/receiver/losses", { dish }, PART],
	...["cavity", "openCoil", "glazedCoil"].map(
		(kind) => [`losses, every row of a ${kind}`, "/v1/receiver/losses", full(kind), CURVE] as const,
	),
];

const unit = await yardstick();
const lines: Measured[] = [];
for (const [name, path, body, limit] of jobs) {
	const text = JSON.stringify(body);
	const headers = { "Content-Type": "application/json", "Content-Length": String(text.length) };
	const request = () => app.request(path, { method: "POST", headers, body: text });
	const first = await request();
	if (first.status !== 200) throw new Error(`${name} is answered ${first.status}: ${await first.text()}`);
	lines.push({ name, ratio: (await medianTime(request)) / unit, limit });
}
report(lines);
