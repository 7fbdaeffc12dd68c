import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { heatedStream } from "../../../src/instant/heated-stream.ts";
import { leastFlow } from "../../../src/instant/least-flow.ts";
import { dutyAt, heaterWith, receivers, sun } from "./heaters.ts";

const open = dutyAt(2350, 0);

describe.each(receivers.map((receiver) => [receiver.kind, receiver] as const))("%s", (_kind, receiver) => {
	const own = heaterWith(receiver);

	it("at the least flow the hottest wall stands at the boiling point", () => {
		const massFlow = leastFlow(own, open, sun(900));
		const stream = heatedStream(own, { fluid: water, inlet: open.cold, massFlow }, sun(900));
		if (stream.kind !== "heated") throw new Error("no gain");
		expect(stream.hottestWall ?? stream.outlet).toBeCloseTo(open.boiling, 1);
		const less = heatedStream(own, { fluid: water, inlet: open.cold, massFlow: massFlow * 0.9 }, sun(900));
		expect(less.kind === "heated" && (less.hottestWall ?? less.outlet)).toBeGreaterThan(open.boiling + 1);
	});

	it("boiling starts earlier higher up, in an open line, and under a stronger sun", () => {
		const flows = [0, 1500, 3000, 4500].map((elevation) => leastFlow(own, dutyAt(elevation, 0), sun(900)));
		for (let i = 1; i < flows.length; i++) expect(flows[i]!).toBeGreaterThan(flows[i - 1]!);
		expect(leastFlow(own, dutyAt(2350, 2e5), sun(900))).toBeLessThan(leastFlow(own, open, sun(900)));
		expect(leastFlow(own, open, sun(600))).toBeLessThan(leastFlow(own, open, sun(900)));
	});
});

it("where even still water does not boil, any flow will do", () => {
	for (const receiver of receivers) {
		const own = heaterWith(receiver);
		expect(leastFlow(own, open, sun(0))).toBe(0);
		expect(leastFlow(own, open, sun(1))).toBe(0);
	}
});
