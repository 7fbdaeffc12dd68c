import { readFileSync } from "node:fs";
import openapiTS, { astToString, COMMENT_HEADER } from "openapi-typescript";
import { expect, it } from "vitest";
import { operations } from "../api/operations/index.ts";
import { contract, contractText } from "../openapi/contract.ts";
import { methodName, sdkOperations } from "../openapi/sdk-operations.ts";
import { OPERATIONS } from "../sdk/operations.ts";
import { sourcesIn } from "./sources.ts";

const built = await contract(); // once: it runs every example
const committed = (path: string) => readFileSync(new URL(`../${path}`, import.meta.url), "utf8");

it("openapi.json is what the schemas say", () => {
	expect(contractText(built)).toBe(committed("openapi/openapi.json"));
});

it("the SDK's types are what openapi.json says", async () => {
	const document = JSON.parse(committed("openapi/openapi.json")) as Parameters<typeof openapiTS>[0];
	const types = await openapiTS(document, { immutable: true, defaultNonNullable: false });
	expect(`${COMMENT_HEADER}${astToString(types)}`).toBe(committed("sdk/schema.d.ts"));
});

it("the SDK has a method for every operation, and each is what openapi.json says", () => {
	const document = JSON.parse(committed("openapi/openapi.json")) as Parameters<typeof sdkOperations>[0];
	expect(sdkOperations(document)).toBe(committed("sdk/operations.ts"));
	const names = operations.map(({ operationId }) => methodName(operationId));
	expect(Object.keys(OPERATIONS)).toEqual(expect.arrayContaining(names));
});

it("every operation has an example, a name of its own and answers for its faults", () => {
	const { paths } = built;
	expect(new Set(operations.map(({ operationId }) => operationId)).size).toBe(operations.length);
	for (const { path, method, examples } of operations) {
		expect(Object.keys(examples).length).toBeGreaterThan(0);
		const statuses = Object.keys(paths?.[path]?.[method]?.responses ?? {});
		expect(statuses).toEqual(expect.arrayContaining(["200", "400", "406", "500"]));
		if (method === "post") expect(statuses).toEqual(expect.arrayContaining(["413", "415", "422"]));
	}
});

it("no two components share a name", async () => {
	const names = sourcesIn("api").flatMap(({ text }) =>
		[...text.matchAll(/\.openapi\("(\w+)"/g)].map(([, name]) => name!),
	);
	expect(names.length).toBeGreaterThan(5);
	expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});
