import { describe, expect, it } from "vitest";
import { hostel } from "../../api/demo/hostel.ts";
import { WarmUpResponse } from "../../api/operations/warm-up/response.ts";
import { app, failures, problemIn } from "./service.ts";

const quick = { ...hostel.request, stepS: 300, tank: { ...hostel.request.tank, nodes: 4 } };

const post = (body: unknown) =>
	app.request("/v1/tank/warm-up", {
		method: "POST",
		headers: { "content-type": "application/json" },
		body: JSON.stringify(body),
	});

async function answered(body: unknown): Promise<WarmUpResponse> {
	const response = await post(body);
	const json = await response.json();
	expect(response.status, JSON.stringify(json)).toBe(200);
	expect(failures).toEqual([]);
	return WarmUpResponse.parse(json);
}

describe("200", () => {
	it("has no range unless it is asked for, and says so", async () => {
		const { range, assumed } = await answered(quick);
		expect(range).toBeUndefined();
		expect(assumed).toContainEqual(expect.objectContaining({ pointer: "/withRange", value: false }));
		expect(assumed.some(({ pointer }) => pointer.startsWith("/spreads"))).toBe(false);
	});

	it("tells low, central and high, about the same answer", async () => {
		const { range: _none, assumed: _few, methods: _plain, ...plain } = await answered(quick);
		const { range, assumed, methods, ...ranged } = await answered({ ...quick, withRange: true });
		expect(ranged).toEqual(plain);
		expect(range!.days).toBeLessThanOrEqual(40);
		for (const [name, central] of [
			["timeToTargetMin", plain.timeToTargetMin],
			["endTemperatureC", plain.endTemperatureC],
			["usableLitresAt40C", plain.usableLitresAt40C],
			["toWaterKwh", plain.energyBalance.toWaterKwh],
		] as const) {
			expect(range![name].central).toBe(central);
			expect(range![name].low!).toBeLessThan(central!);
			if (range![name].high !== undefined) expect(range![name].high).toBeGreaterThan(central!);
		}
		const names = range!.inputs.map(({ name }) => name);
		expect(names).toContain("linkeTurbidity");
		expect(names).not.toContain("measuredIrradiance");
		for (const name of names)
			expect(assumed).toContainEqual(expect.objectContaining({ pointer: `/spreads/${name}` }));
		expect(methods.map(({ name }) => name).join()).toMatch(/propagation|hypercube/);
	});

	it("propagates far from every limit, in 13 days at most", async () => {
		const far = { ...quick, targetTemperatureC: 30, tank: { ...quick.tank, volumeL: 250 } };
		const { range } = await answered({ ...far, withRange: true, draw: { mainsTemperatureC: 7 } });
		expect(range!.days).toBeLessThanOrEqual(13);
		for (const name of ["timeToTargetMin", "endTemperatureC", "usableLitresAt40C", "toWaterKwh"] as const)
			expect(range![name].method).toBe("propagation");
		expect(range!.shareReached).toBeUndefined();
	});

	it("samples where the target is just reached or not, and tells how often it is", async () => {
		const { endTemperatureC } = await answered(quick);
		const { range } = await answered({ ...quick, targetTemperatureC: endTemperatureC - 1, withRange: true });
		expect(range!.timeToTargetMin.method).toBe("sample");
		expect(range!.shareReached).toBeGreaterThan(0);
		expect(range!.shareReached).toBeLessThan(1);
		expect(range!.days).toBe(40);
	});

	it("is narrower where the caller knows more, and a spread of one's own says so", async () => {
		const certain = { linkeTurbidity: 0, cleanliness: 0.01 };
		const wide = (await answered({ ...quick, withRange: true })).range!;
		const { range, assumed } = await answered({ ...quick, withRange: true, spreads: certain });
		const width = ({ endTemperatureC: { low, high } }: typeof wide) => high! - low!;
		expect(width(range!)).toBeLessThan(0.7 * width(wide));
		expect(range!.inputs.map(({ name }) => name)).not.toContain("linkeTurbidity");
		expect(range!.inputs.find(({ name }) => name === "cleanliness")).toMatchObject({
			spread: 0.01,
			reason: "stated in the request",
		});
		const pointers = assumed.map(({ pointer }) => pointer);
		expect(pointers).not.toContain("/spreads/cleanliness");
		expect(pointers).toContain("/spreads/wind");
	});

	it("has no time where the sun never comes", async () => {
		const { range } = await answered({
			...quick,
			site: { latitude: 78.2, longitude: 15.6, elevationM: 10 },
			date: "2025-12-21",
			draw: {},
			withRange: true,
		});
		expect(range!.timeToTargetMin).toEqual({ method: "propagation" });
		expect(Math.abs(range!.toWaterKwh.low!)).toBeLessThan(1e-3);
		expect(Math.abs(range!.toWaterKwh.high!)).toBeLessThan(1e-3);
	});

	it("the same request gives the same bytes", async () => {
		const [first, second] = [
			await post({ ...quick, withRange: true }),
			await post({ ...quick, withRange: true }),
		];
		expect(await first.text()).toBe(await second.text());
	});
});

it.each([
	["a spread below zero", { withRange: true, spreads: { wind: -0.1 } }, 400, "/spreads/wind"],
	["a spread of nothing known", { withRange: true, spreads: { moon: 0.1 } }, 400, "/spreads/moon"],
	["spreads without a range", { spreads: { wind: 0.1 } }, 422, "/spreads"],
])("refuses %s", async (_name, changes, status, pointer) => {
	const response = await post({ ...quick, ...changes });
	expect(response.status).toBe(status);
	const { errors } = await problemIn(response);
	expect(errors?.map((fault) => fault.pointer)).toEqual([pointer]);
});
