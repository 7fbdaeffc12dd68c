import { expect, it } from "vitest";
import { hostel } from "../../../../api/demo/hostel.ts";
import { dayText } from "../../../../api/scripts/demo-text.ts";
import { raykettle } from "../../../contract/service.ts";

it("counts a minute that rounds up to an hour as one", async () => {
	const day = await raykettle.warmUpTank(hostel.request);
	expect(dayText(hostel, { ...day, timeToTargetMin: 359.7 })).toContain(", 6 h 0 min after sunrise");
});

it("fits a terminal of 80 columns and holds no value that was not computed", async () => {
	const text = dayText(hostel, await raykettle.warmUpTank(hostel.request));
	for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
	expect(text).not.toMatch(/NaN|undefined|[{}]/);
});
