import { describe, expect, it } from "vitest";
import { designRun, designWindow } from "../../../src/design/run.ts";
import { designMeasuredSky } from "../../../src/design/sky.ts";
import { sunDay } from "../../../src/sun/day.ts";
import { sunPosition } from "../../../src/sun/position.ts";
import { site } from "../plant/plants.ts";

const midnight = Date.UTC(2025, 0, 15) / 1000;
const day = { firstMinute: midnight, noon: midnight + 43_200, lastMinute: midnight + 86_340 };
const arctic = { ...site, latitude: (75 * Math.PI) / 180 };
const subjects = (assumed: readonly { readonly subject: string }[]) => assumed.map(({ subject }) => subject);

describe("a run", () => {
	it("that nobody stated is the daylight, to whole minutes outside of it", () => {
		const { design, assumed } = designRun({}, site, day);
		const sun = sunDay(day.noon, site.latitude, site.longitude);
		if (sun.kind !== "riseAndSet") throw new Error("another day");
		expect([design.start % 60, design.end % 60]).toEqual([0, 0]);
		expect(sun.sunrise - design.start).toBeGreaterThanOrEqual(0);
		expect(sun.sunrise - design.start).toBeLessThan(60);
		expect(design.end - sun.sunset).toBeGreaterThanOrEqual(0);
		expect(design.end - sun.sunset).toBeLessThan(60);
		const below = (time: number) => sunPosition(time, site.latitude, site.longitude).trueAltitude < 0;
		expect([below(design.start), below(design.end)]).toEqual([true, true]);
		expect(subjects(assumed)).toEqual(["run.start", "run.end"]);
	});

	it("in a polar night is the day by the clock", () => {
		const { design } = designRun({}, arctic, day);
		expect(design).toEqual({ start: day.firstMinute, end: day.lastMinute });
	});

	it("keeps what is stated", () => {
		const { design, assumed } = designRun({ start: day.noon }, site, day);
		expect(design.start).toBe(day.noon);
		expect(subjects(assumed)).toEqual(["run.end"]);
	});
});

describe("a window", () => {
	it("is two hours either side of the sun's noon", () => {
		const { design } = designWindow({}, site, day.noon);
		expect(design.end - design.start).toBe(4 * 3600);
		const noon = (design.start + design.end) / 2;
		const altitude = (time: number) => sunPosition(time, site.latitude, site.longitude).trueAltitude;
		expect(altitude(noon)).toBeGreaterThan(altitude(noon - 600));
		expect(altitude(noon)).toBeGreaterThan(altitude(noon + 600));
		expect(design.light.start).toBeLessThan(design.start);
		expect(design.light.end).toBeGreaterThan(design.end);
	});

	it("keeps what is stated", () => {
		const { design, assumed } = designWindow({ start: midnight, end: day.noon }, site, day.noon);
		expect(design).toMatchObject({ start: midnight, end: day.noon });
		expect(assumed).toEqual([]);
	});
});

describe("a measured sky", () => {
	const sky = {
		...{ time: [0, 600], diffuse: undefined, global: undefined },
		...{ beam: [700, 800], ambient: [280, 281], wind: [1, 2] },
	};

	it("of beam alone has no diffuse light", () => {
		const { design, assumed } = designMeasuredSky(sky);
		expect([...Array.from(design.diffuse ?? [])]).toEqual([0, 0]);
		expect(subjects(assumed)).toEqual(["sky.diffuse"]);
	});

	it("of more than beam stays as it is", () => {
		const measured = { ...sky, global: [500, 600] };
		expect(designMeasuredSky(measured)).toEqual({ design: measured, assumed: [] });
	});
});
