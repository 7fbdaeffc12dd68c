import { describe, expect, it } from "vitest";
import { app, parsed, raykettle } from "./service.ts";

describe("200", () => {
	it("is live", async () => {
		expect(parsed("getLiveness", await raykettle.liveness())).toEqual({ status: "live" });
	});

	it("is ready when water boils at 372.755919 K under 0.1 MPa", async () => {
		const ready = await raykettle.readiness(); // IAPWS R7-97(2012), table 36
		parsed("getReadiness", ready);
		expect(ready.check.computed).toBeCloseTo(372.755919, 5);
	});

	it("is never kept", async () => {
		expect((await app.request("/health/ready")).headers.get("cache-control")).toBe("no-store");
	});
});
