/** Cost of each part on its own, HTTP edge included, against 50 000 sun positions in the same process: loop and tank with
 *  what is asked when nothing is said and with the most that may be asked, and the tables that the service carries. */
import { createApp } from "../../api/app.ts";
import { type Measured, medianTime, report, yardstick } from "./yardstick.ts";

const app = createApp({ indexPage: undefined, onFailure: console.error });
const PART = 0.13;
const CURVE = 0.7;
const twenty = <T>(of: (i: number) => T) => Array.from({ length: 20 }, (_, i) => of(i));
const wound = { lengthM: 20, innerDiameterMm: 8, helixDiameterM: 0.2 };

const fullLoop = {
	supplyTemperatureC: 200,
	addedThicknessMm: twenty((i) => 10 + i * 10).slice(0, 12),
	coldStartTemperatureC: twenty((i) => -18 + i * 5),
	furtherTubes: Array(10).fill(wound),
};
const fullTank = {
	tank: { volumeL: 300, nodes: 50, startTemperatureC: Array.from({ length: 50 }, (_, i) => 90 - i) },
	durationH: 168,
	seriesStepMin: 15,
	untilC: twenty((i) => 80 - i),
};

const jobs: readonly (readonly [name: string, path: string, body: object | undefined, limit: number])[] = [
	["fluids", "/v1/fluids", undefined, PART],
	["one fluid, half kelvins", "/v1/fluids/mineralOilVg32?stepK=0.5", undefined, PART],
	["insulations", "/v1/insulations", undefined, PART],
	["tapping profiles", "/v1/tapping-profiles", undefined, PART],
	["loop losses", "/v1/loop/losses", { supplyTemperatureC: 120 }, PART],
	["loop losses, every list full", "/v1/loop/losses", fullLoop, CURVE],
	["tank cooling, a day", "/v1/tank/cooling", { tank: { volumeL: 200 } }, PART],
	["tank cooling, a week by 50 layers and 15 min", "/v1/tank/cooling", fullTank, CURVE],
];

function init(body: object | undefined): RequestInit {
	if (body === undefined) return {};
	const text = JSON.stringify(body);
	const length = String(new TextEncoder().encode(text).length);
	return {
		method: "POST",
		headers: { "Content-Type": "application/json", "Content-Length": length },
		body: text,
	};
}

const unit = await yardstick();
const lines: Measured[] = [];
for (const [name, path, body, limit] of jobs) {
	const request = () => app.request(path, init(body));
	const first = await request();
	if (first.status !== 200) throw new Error(`${name} is answered ${first.status}: ${await first.text()}`);
	lines.push({ name, ratio: (await medianTime(request)) / unit, limit });
}
report(lines);
