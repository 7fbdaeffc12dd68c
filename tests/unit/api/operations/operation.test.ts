import { z } from "@hono/zod-openapi";
import { describe, expect, it } from "vitest";
import { IN_PLACE } from "../../../../api/compute/answer-text.ts";
import { operation } from "../../../../api/operations/operation.ts";
import { contradictory } from "../../../../api/validation/rule.ts";
import { assume, sentOr } from "../../../../api/wire/defaults.ts";
import { derived, practice } from "../../../../src/design/grounds.ts";

const Request = z.strictObject({
	width: assume(z.number(), 3, practice("the usual width")),
	height: z.number().optional(),
	colour: assume(z.string(), "white", practice("white keeps cool")),
});

/** A box: as high as wide unless stated otherwise. Its colour plays no part. */
const box = operation({
	...{ method: "post", path: "/box", operationId: "getBox", tag: "Plant", summary: "", description: "" },
	...{ examples: {}, maxAge: 0, cost: 1 },
	input: Request,
	output: z.strictObject({
		area: z.number(),
		assumed: z.array(z.unknown()),
		cautions: z.array(z.unknown()),
		methods: z.array(z.unknown()),
	}),
	unused: ["/colour"],
	designs: ({ width }) => ({ half: width / 2 }),
	rules: [
		({ width }) => (width > 0 ? [] : [contradictory("/width", "too narrow")]),
		({ height = 1 }) => (height > 0 ? [] : [contradictory("/height", "too low")]),
		(_request, { half }) => (half < 50 ? [] : [contradictory("/width", "half of it is too wide")]),
	],
	plan: ({ width, height }) => {
		const tall = sentOr(height, "/height", width, derived("as high as wide"));
		return { value: { width, height: tall.value }, assumed: tall.assumed };
	},
	outcome: ({ width, height }) => width * height,
	answer: (_plan, area) => ({ area }),
	cautions: ({ width }, area) => [
		{
			code: "fluidBurns",
			severity: "info",
			parameters: { width: { kind: "length", value: width }, area: { kind: "area", value: area } },
			message: "{width} wide, {area} large",
		},
	],
	methods: () => [METHOD],
	assumed: (area) => [{ pointer: "/size", value: area, ...derived("what came out") }],
});
const METHOD = Object.freeze({ name: "Product", source: "arithmetic", confirmed: true, outsideRange: false });

const answered = (body: object) =>
	box.answer(box.input.parse(body), body, IN_PLACE) as Record<string, unknown>;

describe("an operation's answer", () => {
	it("lists what was assumed, of the schema, the plan and the outcome, but for what plays no part", () => {
		expect(answered({}).assumed).toEqual([
			{ pointer: "/width", value: 3, ...practice("the usual width") },
			{ pointer: "/height", value: 3, ...derived("as high as wide") },
			{ pointer: "/size", value: 9, ...derived("what came out") },
		]);
		expect(answered({ width: 2, height: 4 })).toMatchObject({ area: 8, assumed: [{ pointer: "/size" }] });
	});

	it("has its cautions in the units of the wire, and its methods as copies", () => {
		const { cautions, methods } = answered({ width: 2 });
		expect(cautions).toMatchObject([
			{ code: "fluidBurns", parameters: { widthM: 2, areaM2: 4 }, message: "2 m wide, 4 m² large" },
		]);
		expect(methods).toEqual([METHOD]);
		expect((methods as object[])[0]).not.toBe(METHOD);
	});
});

it("is refused with the faults of every rule, of the request and of its designs", () => {
	expect(() => answered({ width: -1, height: 0 })).toThrow(
		expect.objectContaining({
			kind: "contradictory",
			errors: [
				expect.objectContaining({ pointer: "/width" }),
				expect.objectContaining({ pointer: "/height" }),
			],
		}),
	);
	expect(() => answered({ width: 100 })).toThrow("half of it is too wide");
});
