import { describe, expect, it } from "vitest";
import { improvedCase } from "../../../src/improvements/improvements.ts";
import { daySensitivity, type Improvement } from "../../../src/improvements/sensitivity.ts";
import { IMPROVEMENTS, type ImprovementId, type Steps } from "../../../src/improvements/steps.ts";
import type { DayCase } from "../../../src/uncertainty/day-case.ts";
import { dayOf } from "../../../src/uncertainty/day-case.ts";
import { cavity, glazedCoil, measuredDish, openCoil } from "../plant/plants.ts";
import { dayCase, FAULTY, reduced, steps } from "../uncertainty/day-cases.ts";

const plain = reduced(dayCase(cavity, 0.3, 323.15));

function found(stated: DayCase, by: Steps = steps) {
	const all = daySensitivity(stated, dayOf(stated), by, "timeToTarget");
	const of = (id: ImprovementId) => all.find((one) => one.id === id)!;
	const gains = (id: ImprovementId) => {
		const one = of(id);
		if (one.outcome !== "gains") throw new Error(`${id} gains nothing: ${one.outcome}`);
		return one.gains;
	};
	return { all, of, gains };
}

const ofPlain = found(plain);

const why = (one: Improvement) => (one.outcome === "idle" ? one.why : one.outcome);

describe.each([
	["cavity", cavity],
	["open coil", openCoil],
	["glazed coil", glazedCoil],
	["measured dish", measuredDish],
])("a plant with a %s", (_name, receiver) => {
	const stated = dayCase(receiver, 0.3, 318.15);
	const all = daySensitivity(stated, dayOf(stated), steps, "timeToTarget");

	it("is answered for every improvement once", () => {
		expect(all.map(({ id }) => id).sort()).toEqual([...IMPROVEMENTS].sort());
	});

	it("never gets worse by better optics, lagging, coating or shorter pipes", () => {
		const worse = all.filter(
			(one) =>
				one.outcome === "gains" &&
				one.id !== "glazing" && // a pane takes light too
				(one.gains.timeToTarget < -30 || one.gains.endTemperature < -0.02),
		);
		expect(worse.map(({ id }) => id)).toEqual([]);
	});
});

describe("the order", () => {
	it.each(["timeToTarget", "endTemperature", "usableVolume", "toWater"] as const)("falls by %s", (by) => {
		const all = daySensitivity(plain, dayOf(plain), steps, by);
		const gains = all.flatMap((one) => (one.outcome === "gains" ? [one.gains[by]] : []));
		expect(gains).toEqual([...gains].sort((a, b) => b - a));
		expect(all.slice(gains.length).every(({ outcome }) => outcome === "idle")).toBe(true);
	});

	it("puts what reaches the target first where the plant does not", () => {
		const short = reduced(dayCase(cavity, 0.3, 338.15));
		const base = dayOf(short);
		expect(base.reached).toBe(false);
		const all = daySensitivity(short, base, steps, "timeToTarget");
		const reaches = all.map((one) => (one.outcome === "gains" ? one.reaches : "idle"));
		expect(reaches[0]).toBe("onlyWith");
		expect(all[0]!.id).toBe("aperture");
		expect(reaches.lastIndexOf("onlyWith")).toBeLessThan(reaches.indexOf("neither"));
	});
});

describe("sums", () => {
	const small: Steps = {
		...steps,
		aperture: 0.01,
		reflectance: 0.905,
		cleaning: 0.955,
		slopeError: 0.05,
		selectiveCoating: 0.85,
		supplyLagging: 0.002,
		returnLagging: 0.002,
		pumpLagging: 0.05,
		tankLagging: 0.005,
		flow: 0.02,
		coilLength: 0.02,
		shorterPipes: 0.02,
	};
	const ids: readonly ImprovementId[] = IMPROVEMENTS.filter(
		(id) => !["receiverAperture", "glazing", "dryLagging"].includes(id),
	);

	it("of small steps agree with one march of them all", () => {
		const { gains } = found(plain, small);
		const base = dayOf(plain);
		const together = ids.reduce<DayCase>((of, id) => {
			const changed = improvedCase(of, id, small, base);
			if (typeof changed === "string") throw new Error(`${id}: ${changed}`);
			return changed;
		}, plain);
		const day = dayOf(together);
		const sum = (name: "timeToTarget" | "endTemperature" | "usableVolume" | "toWater") =>
			ids.reduce((total, id) => total + gains(id)[name], 0);
		const near = (a: number, b: number) => expect(Math.abs(a / b - 1)).toBeLessThan(0.04); // second order of steps that add to 5 %
		near(sum("timeToTarget"), base.targetTime - day.targetTime);
		near(sum("endTemperature"), day.endMean - base.endMean);
		near(sum("usableVolume"), day.usableVolume - base.usableVolume);
		near(sum("toWater"), day.balance.toWater - base.balance.toWater);
	});
});

describe("what is useless", () => {
	it("gains about nothing", () => {
		const { coil } = plain.plant;
		const stated = { ...plain, plant: { ...plain.plant, coil: { ...coil, length: 60, top: 1 } } };
		expect(found(stated).gains("coilLength").endTemperature).toBeLessThan(0.1); // of 30 K, with five times the coil it needs
		const tank = { ...plain.plant.tank, insulation: { ...plain.plant.tank.insulation, thickness: 2 } };
		const lagged = found({ ...plain, plant: { ...plain.plant, tank } });
		expect(Math.abs(lagged.gains("tankLagging").endTemperature)).toBeLessThan(0.02);
		expect(Math.abs(lagged.gains("tankLagging").timeToTarget)).toBeLessThan(15);
	});

	it("is said to be so already, and costs no march", () => {
		const clean = { ...plain.plant.dish, reflectance: 0.95, cleanliness: 0.99, slopeError: 0 };
		const { of } = found({ ...plain, plant: { ...plain.plant, dish: clean } });
		for (const id of ["reflectance", "cleaning", "slopeError"] as const)
			expect(why(of(id))).toBe("alreadySo");
	});

	it("is told apart by its reason", () => {
		const { of } = ofPlain;
		expect(why(of("glazing"))).toBe("notOnThisReceiver");
		expect(why(found(reduced(dayCase(glazedCoil, 0.3, 318.15))).of("glazing"))).toBe("alreadySo");
		const measured = found(reduced(dayCase(measuredDish, 0.3, 318.15)));
		for (const id of [
			"reflectance",
			"cleaning",
			"slopeError",
			"receiverAperture",
			"selectiveCoating",
			"glazing",
		] as const)
			expect(why(measured.of(id))).toBe("measuredWhole");
		const wound = { ...plain.plant.coil, top: 0.051, length: 1.1 };
		expect(why(found({ ...plain, plant: { ...plain.plant, coil: wound } }).of("coilLength"))).toBe("noRoom");
	});

	it("has no opening to choose at night", () => {
		const night = {
			...plain,
			task: { ...plain.task, start: plain.task.start - 6 * 3600, end: plain.task.start - 2 * 3600 },
		};
		expect(why(found(night).of("receiverAperture"))).toBe("noSun");
	});
});

describe("an improved plant that the models refuse", () => {
	/** A pump without limit: a thousand times its flow heats the fluid by friction beyond what any model covers. */
	const { pump } = plain.plant.loop;
	const unlimited = { ...pump, maximumPressure: 1e30, electricPower: 1e30, efficiency: 1 };
	const strong: DayCase = {
		...plain,
		plant: { ...plain.plant, loop: { ...plain.plant.loop, pump: unlimited } },
	};
	const base = dayOf(strong);
	const found = daySensitivity(strong, base, { ...steps, flow: 1000 }, "timeToTarget");

	it("is told last, with its reason and with the plant that was tried", () => {
		const last = found.at(-1)!;
		if (last.outcome !== "refused") throw new Error("not refused");
		expect(last).toMatchObject({
			id: "flow",
			error: { code: "out_of_range", subject: "receiver.wallTemperature" },
		});
		expect(last.of!.plant.loop.pump.flow).toBeCloseTo(1001 * pump.flow, 12);
	});

	it("takes no other with it", () => {
		const others = (all: readonly Improvement[]) => all.filter(({ id }) => id !== "flow");
		expect(others(found)).toEqual(others(daySensitivity(strong, base, steps, "timeToTarget")));
	});

	it("is told from a fault of the service", () => {
		const faulty = { ...plain, plant: { ...plain.plant, loop: { ...plain.plant.loop, fluid: FAULTY } } };
		expect(() => daySensitivity(faulty, base, steps, "timeToTarget")).toThrow(TypeError);
	});
});

describe("dry lagging", () => {
	const damp = (moisture: number): DayCase => {
		const { loop } = plain.plant;
		const wet = (pipe: typeof loop.supply) => ({ ...pipe, insulation: { ...pipe.insulation, moisture } });
		return {
			...plain,
			plant: { ...plain.plant, loop: { ...loop, supply: wet(loop.supply), return: wet(loop.return) } },
		};
	};

	it("is worth what wet lagging would lose, where it is dry", () => {
		expect(ofPlain.of("dryLagging")).toMatchObject({ outcome: "gains", how: "kept" });
		expect(ofPlain.gains("dryLagging").endTemperature).toBeGreaterThan(0.1);
	});

	it("is worth what drying it wins, where it is wet", () => {
		const wet = found(damp(0.05));
		expect(wet.of("dryLagging")).toMatchObject({ outcome: "gains", how: "made" });
		expect(wet.gains("dryLagging").endTemperature).toBeGreaterThan(0.05);
		expect(found(damp(0.1)).gains("dryLagging").endTemperature).toBeGreaterThan(
			wet.gains("dryLagging").endTemperature,
		);
	});
});

describe("the receiver's opening", () => {
	const opened = (apertureDiameter: number): DayCase =>
		reduced(dayCase({ ...cavity, apertureDiameter }, 0.3, 318.15));

	it("is narrowed where too wide and widened where too narrow, and either gains", () => {
		for (const diameter of [0.035, 0.155]) {
			const stated = opened(diameter);
			const one = found(stated).of("receiverAperture");
			if (one.outcome !== "gains" || one.of.plant.receiver.kind !== "cavity")
				throw new Error("nothing to change");
			const after = one.of.plant.receiver.apertureDiameter;
			expect(Math.sign(after - diameter)).toBe(diameter < 0.1 ? 1 : -1);
			expect(one.gains.toWater).toBeGreaterThan(0);
		}
	});
});
