/** Cost of the main job, HTTP edge included, against 50 000 sun positions in the same process. Run with `npm run bench`. */
import { createApp } from "../../api/app.ts";
import { hostel } from "../../api/demo/hostel.ts";
import { medianTime, report, yardstick } from "./yardstick.ts";

const app = createApp({
	indexPage: undefined,
	onFailure: (error) => {
		throw error;
	},
});
const body = JSON.stringify(hostel.request);
const headers = { "Content-Type": "application/json", "Content-Length": String(body.length) };
const request = async () => app.request("/v1/tank/warm-up", { method: "POST", headers, body });

const first = await request();
if (first.status !== 200)
	throw new Error(`the demo scenario is answered ${first.status}: ${await first.text()}`);
const unit = await yardstick();
report([
	{
		name: "warm-up at the default step, in sun positions × 50 000",
		ratio: (await medianTime(request)) / unit,
		limit: 1,
	},
]);
