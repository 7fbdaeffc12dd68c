/** Cost of the main job, HTTP edge included, against 50 000 sun positions in the same process. Run with `npm run bench`. */
import { createApp } from "../../api/app.ts";
import { defaultConfig } from "../../api/config.ts";
import { hostel } from "../../api/scenario/hostel.ts";
import { medianTime, report, yardstick } from "./yardstick.ts";

const app = createApp(defaultConfig);
const body = JSON.stringify(hostel);
const request = () =>
	app.request("/v1/tank/warm-up", {
		method: "POST",
		headers: { "Content-Type": "application/json", "Content-Length": String(body.length) },
		body,
	});

const first = await request();
if (first.status !== 200) throw new Error(`the demo scenario is answered ${first.status}: ${await first.text()}`);
const unit = await yardstick();
report([{ name: "warm-up, default step", ratio: (await medianTime(request)) / unit, limit: 1 }]);
