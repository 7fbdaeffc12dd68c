import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
	dateOf,
	instantOf,
	isoText,
	isoTexts,
	isTimeZone,
	offsetAt,
	timeZoneAt,
} from "../../../../api/wire/time-zone.ts";

const BERLIN = "Europe/Berlin"; // 2025: clocks forward on 30 March at 01:00 UTC, back on 26 October at 01:00 UTC
const seconds = (text: string) => Date.parse(text) / 1000;

describe("timeZoneAt", () => {
	it.each([
		[28.6, 77.2, "Asia/Kolkata"],
		[52.5, 13.4, "Europe/Berlin"],
		[39.74, -105.18, "America/Denver"],
		[-33.87, 151.21, "Australia/Sydney"],
		[27.7, 85.3, "Asia/Kathmandu"],
	])("finds the zone of %d, %d", (latitude, longitude, zone) => {
		expect(timeZoneAt(latitude, longitude)).toBe(zone);
	});

	it("gives a zone that the runtime knows, everywhere", () => {
		fc.assert(
			fc.property(
				fc.double({ min: -90, max: 90, noNaN: true }),
				fc.double({ min: -180, max: 180, noNaN: true }),
				(latitude, longitude) => isTimeZone(timeZoneAt(latitude, longitude)),
			),
			{ seed: 7, numRuns: 500 },
		);
	});
});

describe("isTimeZone", () => {
	it.each(["Asia/Kolkata", "UTC", "Etc/GMT+7", "America/Argentina/Buenos_Aires", "Europe/Kyiv"])(
		"knows %s",
		(name) => {
			expect(isTimeZone(name)).toBe(true);
		},
	);

	it.each(["", "Mars/Olympus", "+05:30", "05:30", "Asia", "Europe/Berlin ", "constructor", "a".repeat(2000)])(
		"refuses %j",
		(name) => {
			expect(isTimeZone(name)).toBe(false);
		},
	);
});

describe("instantOf", () => {
	it("reads a local time in winter, in summer and at a quarter-hour offset", () => {
		expect(instantOf("2025-01-15", "08:30", BERLIN)).toBe(seconds("2025-01-15T07:30:00Z"));
		expect(instantOf("2025-07-15", "08:30", BERLIN)).toBe(seconds("2025-07-15T06:30:00Z"));
		expect(instantOf("2025-07-15", "08:30:15", "Asia/Kathmandu")).toBe(seconds("2025-07-15T02:45:15Z"));
	});

	it("shifts a time that a clock change skips forward by the gap", () => {
		expect(instantOf("2025-03-30", "01:59", BERLIN)).toBe(seconds("2025-03-30T00:59:00Z"));
		expect(isoText(instantOf("2025-03-30", "02:30", BERLIN), BERLIN)).toBe("2025-03-30T03:30:00+02:00");
		expect(instantOf("2025-03-30", "03:00", BERLIN)).toBe(seconds("2025-03-30T01:00:00Z"));
	});

	it("takes the earlier of a time that occurs twice", () => {
		expect(isoText(instantOf("2025-10-26", "02:30", BERLIN), BERLIN)).toBe("2025-10-26T02:30:00+02:00");
		expect(isoText(instantOf("2025-10-26", "03:00", BERLIN), BERLIN)).toBe("2025-10-26T03:00:00+01:00");
		expect(isoText(instantOf("2025-10-26", "01:59", BERLIN), BERLIN)).toBe("2025-10-26T01:59:00+02:00");
	});

	it("does the same west of Greenwich and with half an hour of daylight saving", () => {
		// Denver: 2025-03-09 02:00 → 03:00, 2025-11-02 02:00 → 01:00. Lord Howe: 2025-10-05 02:00 → 02:30.
		const at = (date: string, clock: string, zone: string) => isoText(instantOf(date, clock, zone), zone);
		expect(at("2025-03-09", "02:30", "America/Denver")).toBe("2025-03-09T03:30:00-06:00");
		expect(at("2025-11-02", "01:30", "America/Denver")).toBe("2025-11-02T01:30:00-06:00");
		expect(at("2025-10-05", "02:10", "Australia/Lord_Howe")).toBe("2025-10-05T02:40:00+11:00");
	});

	it("skips a whole day where a country did", () => {
		// Samoa had no 30 December 2011: it went from UTC−10 to UTC+14 at the end of the 29th.
		expect(isoText(instantOf("2011-12-30", "12:00", "Pacific/Apia"), "Pacific/Apia")).toBe(
			"2011-12-31T12:00:00+14:00",
		);
	});

	it("gives back the local time of any instant outside a change of clocks", () => {
		const zones = [BERLIN, "America/St_Johns", "Asia/Kolkata", "Pacific/Chatham", "America/Sao_Paulo"];
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 4_000_000_000 }), fc.constantFrom(...zones), (time, zone) => {
				const local = isoText(time, zone);
				const back = instantOf(local.slice(0, 10), local.slice(11, 19), zone);
				const changes = offsetAt(time, zone) !== offsetAt(time - 7200, zone); // the second of two equal clock times
				return back === time || changes;
			}),
			{ seed: 11, numRuns: 500 },
		);
	});
});

describe("isoText", () => {
	it("writes an offset that Date reads back as the same instant", () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 4_000_000_000 }), (time) =>
				["UTC", BERLIN, "America/St_Johns", "Asia/Kathmandu"].every(
					(zone) => seconds(isoText(time, zone)) === time,
				),
			),
			{ seed: 13, numRuns: 200 },
		);
	});

	it("rounds to the second and writes Z at no offset", () => {
		expect(isoText(0.4, "UTC")).toBe("1970-01-01T00:00:00Z");
		expect(isoText(0.6, "Europe/London")).toBe("1970-01-01T01:00:01+01:00"); // British Standard Time, 1968 to 1971
	});

	it("tells the local date across midnight", () => {
		expect(dateOf(seconds("2025-01-15T23:30:00Z"), "Asia/Kolkata")).toBe("2025-01-16");
		expect(dateOf(seconds("2025-01-15T02:30:00Z"), "America/Denver")).toBe("2025-01-14");
	});
});

describe("isoTexts", () => {
	it.each([
		["2025-03-29T00:00:00Z", BERLIN],
		["2025-10-25T00:00:00Z", BERLIN],
		["2025-06-01T00:00:00Z", "Asia/Kolkata"],
		["2025-10-04T00:00:00Z", "Australia/Lord_Howe"],
	])("writes the same texts as one by one from %s in %s", (from, zone) => {
		const times = Array.from({ length: 200 }, (_, i) => seconds(from) + i * 1800);
		expect(isoTexts(times, zone)).toEqual(times.map((time) => isoText(time, zone)));
	});

	it("does so over years, where offsets change and change back between the ends", () => {
		const times = Array.from({ length: 300 }, (_, i) => seconds("2024-01-01T00:00:00Z") + i * 86_400 * 3);
		expect(isoTexts(times, BERLIN)).toEqual(times.map((time) => isoText(time, BERLIN)));
		expect(isoTexts([], BERLIN)).toEqual([]);
	});
});
