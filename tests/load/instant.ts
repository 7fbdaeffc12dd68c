/** Cost of an instant heater's answer in marches of the main job, HTTP edge included, for every example of the contract, without its range. */
import { createApp } from "../../api/app.ts";
import { hostel } from "../../api/demo/hostel.ts";
import { instant } from "../../api/operations/instant-heater/route.ts";
import { type Measured, medianTime, report } from "./yardstick.ts";

const app = createApp({ indexPage: undefined, onFailure: console.error });

async function costOf(path: string, value: unknown): Promise<number> {
	const body = JSON.stringify(value);
	const headers = { "Content-Type": "application/json", "Content-Length": String(Buffer.byteLength(body)) };
	const request = async () => app.request(path, { method: "POST", headers, body });
	const first = await request();
	if (first.status !== 200) throw new Error(`${path} is answered ${first.status}: ${await first.text()}`);
	return medianTime(request);
}

const march = await costOf("/v1/tank/warm-up", hostel.request);
const lines: Measured[] = [];
for (const [name, { value }] of Object.entries(instant.examples))
	lines.push({
		name: `instant heater, ${name}`,
		ratio: (await costOf(instant.path, { ...value, withRange: false })) / march,
		limit: 0.7,
	});
report(lines);
