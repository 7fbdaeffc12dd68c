import { describe, expect, it } from "vitest";
import type { ReceiverConditions } from "../../../src/receiver/conditions.ts";
import { receiverMethods } from "../../../src/receiver/methods.ts";
import type { Receiver } from "../../../src/receiver/receiver.ts";
import { all, cavity, glazedCoil, measured, mild, openCoil } from "./receivers.ts";

const stretched = (receiver: Receiver, ...states: readonly Partial<ReceiverConditions>[]) => {
	const [first, ...rest] = states.map((state) => ({ ...mild, ...state }));
	return receiverMethods(receiver, [first!, ...rest])
		.filter((method) => method.outsideRange)
		.map((method) => method.name);
};

describe("methods of a receiver", () => {
	it("name a source each, but for a measured line", () => {
		for (const receiver of all)
			for (const { source, confirmed } of receiverMethods(receiver, [mild]))
				if (receiver.kind === "efficiencyLine") expect({ source, confirmed }).toEqual({ confirmed: true });
				else expect(source?.length).toBeGreaterThan(10);
	});

	it("own up to a cavity cooler than those measured, and to lagging hotter than its table", () => {
		expect(stretched(cavity, { wallTemperature: 423.15 })).toEqual([
			"Receiver: free convection from the cavity",
		]);
		expect(stretched(cavity, { wallTemperature: 773.15 })).toEqual([]);
		expect(stretched(cavity, { wallTemperature: 973 })).toEqual([
			"Receiver insulation: conductivity of rock wool pipe section at its mean temperature",
		]);
		const bare = { ...openCoil, insulation: { ...openCoil.insulation, thickness: 0 } };
		expect(stretched(bare, { wallTemperature: 1000 })).toEqual([]);
		expect(stretched(measured, { wallTemperature: 900 })).toEqual([]);
	});

	it("own up where any one of several states is stretched", () => {
		expect(stretched(cavity, { wallTemperature: 773.15 }, { wallTemperature: 350 })).toEqual([
			"Receiver: free convection from the cavity",
		]);
	});

	it("own up to wind stronger than was measured at a cavity, and to an opening wider than its hollow", () => {
		expect(stretched(cavity, { wallTemperature: 773.15, wind: 9.1 })).toEqual([
			"Receiver: wind at the cavity",
		]);
		expect(stretched({ ...cavity, depth: 0.05 }, { wallTemperature: 773.15 })).toEqual([
			"Receiver: free convection from the cavity",
		]);
	});

	it("own up to a small level face, to a flat gap and to a wide one", () => {
		expect(stretched(openCoil, {})).toEqual([]);
		expect(stretched({ ...openCoil, apertureDiameter: 0.05 }, {})).toEqual([
			"Receiver: wind and buoyancy on the face",
		]);
		expect(stretched({ ...openCoil, apertureDiameter: 0.05 }, { altitude: 0 })).toEqual([]);
		const gap = "Receiver: air between coil and cover";
		expect(stretched(glazedCoil, {})).toEqual([]);
		expect(stretched({ ...glazedCoil, coverGap: 0.05 }, {})).toEqual([gap]);
		expect(stretched({ ...glazedCoil, coverGap: 0.001 }, {})).toEqual([gap]);
		expect(stretched({ ...glazedCoil, coverGap: 0.2, apertureDiameter: 2 }, {})).toEqual([gap]);
	});
});
