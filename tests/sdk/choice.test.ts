import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Catalogue, catalogueFaults, nameIn } from "../../sdk/widget/catalogue.ts";
import { type Choice, darkestMonth, litresNeeded, openFields, request } from "../../sdk/widget/choice.ts";
import { raykettle } from "../contract/service.ts";

const list = JSON.parse(
	readFileSync(new URL("../../api/pages/cedar-row.json", import.meta.url), "utf8"),
) as Catalogue;
const choice: Choice = {
	...{ placeId: "hostel", latitude: undefined, longitude: undefined, elevationM: undefined },
	...{ dishId: "two", tankId: "two-hundred", month: 1, need: "people", people: 9, litres: undefined },
};

describe("the demo's list", () => {
	it("has no fault, and every name in every language", () => {
		expect(catalogueFaults(list)).toEqual([]);
		for (const { name } of [...list.dishes, ...list.tanks, ...list.places!])
			expect(new Set(["en", "es", "ar"].map((language) => nameIn(name, language))).size).toBe(3);
	});

	it.each(list.dishes.map(({ id }) => id))("dish %s goes with every tank and place", async (dishId) => {
		for (const { id: tankId } of list.tanks)
			for (const { id: placeId } of list.places!) {
				const month = darkestMonth(list.places!.find(({ id }) => id === placeId)!.latitude);
				const answer = await raykettle.warmUpTank(
					request({ ...choice, dishId, tankId, placeId, month }, list, 2026),
				);
				expect(answer.endTemperatureC, `${tankId} ${placeId}`).toBeGreaterThan(20);
			}
	});
});

describe("a list", () => {
	const whole = { dishes: list.dishes, tanks: list.tanks, places: list.places };
	it.each([
		[null, "the list is not an object"],
		[{ ...whole, tanks: "none" }, "tanks is not a list"],
		[{ ...whole, dishes: [{ id: "d", name: "D" }] }, "dishes[0] (d) lacks dish"],
		[{ ...whole, dishes: [{ name: "D", dish: {} }] }, "dishes[0] lacks id or name"],
		[
			{ ...whole, places: [{ id: "p", name: "P", latitude: 1, longitude: 2, elevationM: "100" }] },
			"places[0] (p) lacks elevationM",
		],
		[
			{ ...whole, places: [{ id: "p", name: "P", latitude: 1, elevationM: 0 }] },
			"places[0] (p) lacks latitude and longitude",
		],
		[
			{ ...whole, places: [{ ...list.places![0], id: "p", monthlyAmbientC: [[1, 2]] }] },
			"places[0] (p) lacks 12 pairs in monthlyAmbientC",
		],
	])("is refused with its fault: %#", (given, fault) => expect(catalogueFaults(given)).toEqual([fault]));
});

describe("a choice", () => {
	it("counts people by the litres that the list states, else 35", () => {
		expect(litresNeeded(choice, list)).toBe(315);
		expect(litresNeeded(choice, { ...list, litresPerPerson: 50 })).toBe(450);
		expect(litresNeeded({ ...choice, need: "litres", litres: 120 }, list)).toBe(120);
	});

	it("is open until every number it needs is there and within bounds", () => {
		expect(openFields(choice)).toEqual([]);
		const own = { ...choice, placeId: "" };
		expect(openFields(own)).toEqual(["latitude", "longitude", "elevationM"]);
		expect(openFields({ ...own, latitude: 91, longitude: 0, elevationM: 0 })).toEqual(["latitude"]);
		expect(openFields({ ...own, latitude: 0, longitude: 0, elevationM: 0 })).toEqual([]);
		expect(openFields({ ...choice, people: undefined })).toEqual(["people"]);
		expect(openFields({ ...choice, need: "litres" })).toEqual(["litres"]);
	});

	it("brings the air of its month, or none", () => {
		const july = request({ ...choice, month: 7 }, list, 2026).sky;
		expect(july).toMatchObject({ ...list.places![0]!.sky, ambientMinC: 14, ambientMaxC: 28 });
		const own = { ...choice, placeId: "", latitude: 10, longitude: 20, elevationM: 30 };
		for (const month of [1, 7]) expect(request({ ...own, month }, list, 2026).sky).toEqual(list.plant!.sky);
		expect(list.plant!.sky).not.toHaveProperty("ambientMinC");
	});

	it("asks the service of its own place, or of the list's", () => {
		expect(request(choice, list, 2026)).toMatchObject({
			site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
			date: "2026-01-15",
			targetTemperatureC: 60,
		});
		const own = { ...choice, placeId: "", latitude: 10, longitude: 20, elevationM: 30, month: 12 };
		expect(request(own, list, 2026)).toMatchObject({
			site: { latitude: 10, longitude: 20, elevationM: 30 },
			date: "2026-12-15",
			sky: list.plant!.sky,
		});
	});
});
