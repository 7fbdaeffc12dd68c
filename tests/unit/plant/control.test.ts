import { describe, expect, it } from "vitest";
import { type ControlState, nextControl } from "../../../src/plant/control.ts";
import { plant } from "./plants.ts";

const rules = plant.loop.control; // start 6 K, stop 2 K, tank limit 368.15 K, oil limit 493.15 K, back 5 K below
const resting: ControlState = { pump: "off", dish: "onSun" };
const running: ControlState = { pump: "on", dish: "onSun" };
const read = (receiver: number, tankSensor: number, tankTop: number) => ({ receiver, tankSensor, tankTop });

describe("pump", () => {
	it("starts at the start difference and not before", () => {
		expect(nextControl(rules, resting, read(305.9, 300, 300)).pump).toBe("off");
		expect(nextControl(rules, resting, read(306, 300, 300)).pump).toBe("on");
	});

	it("runs on between the two differences and stops below the lower one", () => {
		expect(nextControl(rules, running, read(303, 300, 300)).pump).toBe("on");
		expect(nextControl(rules, running, read(301.9, 300, 300)).pump).toBe("off");
	});
});

describe("dish", () => {
	it("turns away at the tank's limit and back only once the tank has cooled by the hysteresis", () => {
		const away = nextControl(rules, running, read(370, 360, 368.15));
		expect(away.dish).toBe("tankLimit");
		expect(nextControl(rules, away, read(370, 360, 364)).dish).toBe("tankLimit");
		expect(nextControl(rules, away, read(370, 360, 363.1)).dish).toBe("onSun");
	});

	it("turns away at the oil's limit and back only once the oil has cooled by the hysteresis", () => {
		const away = nextControl(rules, running, read(493.15, 330, 340));
		expect(away.dish).toBe("oilLimit");
		expect(nextControl(rules, away, read(489, 330, 340)).dish).toBe("oilLimit");
		expect(nextControl(rules, away, read(488, 330, 340)).dish).toBe("onSun");
	});
});
