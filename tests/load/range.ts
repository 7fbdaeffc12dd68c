/** Cost of ranges and of improvements, HTTP edge included, in marches of the warm-up: what the same plant's day costs alone. */
import { createApp } from "../../api/app.ts";
import { hostel } from "../../api/demo/hostel.ts";
import { type Measured, medianTime, report } from "./yardstick.ts";

const app = createApp({
	indexPage: undefined,
	onFailure: (error) => {
		throw error;
	},
});

const day = hostel.request;
/** A tank that ends far from the target and from every limit. */
const far = {
	...day,
	targetTemperatureC: 30,
	tank: { ...day.tank, volumeL: 250 },
	draw: { mainsTemperatureC: 7 },
};

function asked(path: string, body: object): () => Promise<Response> {
	const text = JSON.stringify(body);
	const headers = { "Content-Type": "application/json", "Content-Length": String(text.length) };
	return async () => app.request(path, { method: "POST", headers, body: text });
}

async function answer(request: () => Promise<Response>) {
	const response = await request();
	if (response.status !== 200) throw new Error(`answered ${response.status}: ${await response.text()}`);
	return (await response.json()) as { readonly days?: number; readonly range?: { readonly days: number } };
}

const jobs: readonly (readonly [name: string, path: string, body: object, days: number])[] = [
	["warm-up without range", "/v1/tank/warm-up", { ...day, withRange: false }, 1],
	["warm-up, range by propagation", "/v1/tank/warm-up", { ...far, withRange: true }, 13],
	["warm-up, range by sample", "/v1/tank/warm-up", { ...day, withRange: true }, 40],
	["sensitivity without range", "/v1/sensitivity", day, 17],
];

const SLACK = 0.1; // [-] of a march, for what a range or a list adds around its days
const lines: Measured[] = [];
const march = await medianTime(asked("/v1/tank/warm-up", day));
for (const [name, path, body, days] of jobs) {
	const request = asked(path, body);
	const { days: listed, range } = await answer(request);
	lines.push({ name: `${name}, days worked out`, ratio: listed ?? range?.days ?? 1, limit: days });
	lines.push({
		name: `${name}, time in marches`,
		ratio: (await medianTime(request)) / march,
		limit: days + SLACK,
	});
}
report(lines);
