import { describe, expect, it } from "vitest";
import { IN_PLACE } from "../../../../api/compute/answer-text.ts";
import { LIMITS } from "../../../../api/config/limits.ts";
import { dishOpticsOperation } from "../../../../api/operations/dish-optics/route.ts";
import { instant } from "../../../../api/operations/instant-heater/route.ts";
import type { Operation } from "../../../../api/operations/operation.ts";
import { receiverLossesOperation } from "../../../../api/operations/receiver-losses/route.ts";
import { ProblemError } from "../../../../api/problem/problem.ts";

/** The faults that an operation refuses a request with; none when it answers. */
function faultsOf(operation: Operation, body: object): readonly (readonly [string, string])[] {
	try {
		operation.answer(operation.input.parse(body), body, IN_PLACE);
		return [];
	} catch (error) {
		if (!(error instanceof ProblemError)) throw error;
		return (error.errors ?? []).map((fault) => [(fault as { pointer: string }).pointer, fault.code] as const);
	}
}

type Case = readonly [what: string, body: object, ...faults: (readonly [pointer: string, code: string])[]];

/** A case as a test's row: its faults in one list. */
const row = ([what, body, ...faults]: Case) => [what, body, faults] as const;

describe("an instant heater", () => {
	const site = { latitude: 31.2, longitude: -7.9, elevationM: 2350, timeZone: "Africa/Casablanca" };
	const least = { site, dish: { diameterM: 2 } };
	const day = { date: "2025-01-15" };
	const vessel = (of: object) => ({ arrangement: "vessel", vessel: of });
	const faults = (body: object) => faultsOf(instant, { ...least, ...body });

	const cases: readonly Case[] = [
		["water no warmer than the mains", { wantedTemperatureC: 10 }, ["/wantedTemperatureC", "contradictory"]],
		["a window of no day", { endTime: "15:00" }, ["/endTime", "contradictory"]],
		[
			"a window that ends as it starts",
			{ ...day, startTime: "12:00", endTime: "12:00" },
			["/endTime", "contradictory"],
		],
		["a vessel for none", { vessel: {} }, ["/vessel", "contradictory"]],
		[
			"an oil limit nobody knows the oil at",
			vessel({ oilLimitC: 260 }),
			["/vessel/oilLimitC", "out_of_range"],
		],
		[
			"a charge at the oil's limit",
			vessel({ chargeTemperatureC: 160, oilLimitC: 160 }),
			["/vessel/chargeTemperatureC", "contradictory"],
		],
		[
			"a start as hot as the charge",
			vessel({ chargeTemperatureC: 120, startTemperatureC: 120 }),
			["/vessel/startTemperatureC", "contradictory"],
		],
		[
			"water as hot as the oil may be",
			{ ...vessel({ oilLimitC: 80, chargeTemperatureC: 70 }), wantedTemperatureC: 80 },
			["/wantedTemperatureC", "contradictory"],
		],
		[
			"a vessel's coil without wall",
			vessel({ coil: { innerDiameterMm: 15 } }),
			["/vessel/coil/outerDiameterMm", "contradictory"],
		],
		[
			"a vessel's coil upside down",
			vessel({ coil: { bottomHeight: 0.8, topHeight: 0.2 } }),
			["/vessel/coil/topHeight", "contradictory"],
		],
		[
			"a helix wider than the vessel",
			vessel({ coil: { coilDiameterM: 0.5 } }),
			["/vessel/coil/coilDiameterM", "impossible"],
		],
		[
			"a helix narrower than two bores",
			vessel({ coil: { coilDiameterM: 0.02, lengthM: 2 } }),
			["/vessel/coil/coilDiameterM", "out_of_range"],
		],
		["more turns than fit", vessel({ coil: { turns: 900 } }), ["/vessel/coil/turns", "impossible"]],
		[
			"a tube too short to rise to the coil's top",
			vessel({ diameterM: 0.15, coil: { lengthM: 0.3, bottomHeight: 0, topHeight: 1 } }),
			["/vessel/coil/lengthM", "impossible"],
		],
		[
			"a length and turns",
			vessel({ coil: { lengthM: 4, turns: 5 } }),
			["/vessel/coil/lengthM", "contradictory"],
			["/vessel/coil/turns", "contradictory"],
		],
		[
			"several faults at once",
			{ wantedTemperatureC: 5, dish: {}, vessel: {} },
			["/wantedTemperatureC", "contradictory"],
			["/dish", "contradictory"],
			["/vessel", "contradictory"],
		],
	];

	it.each(cases.map(row))("refuses %s", (_what, body, expected) => {
		expect(faults(body)).toEqual(expected);
	});

	it.each([
		["straight through", {}],
		["through a vessel", vessel({})],
		["through a vessel on a day", { ...vessel({ volumeL: 5 }), ...day }],
	])("passes %s", (_what, body) => {
		expect(faults(body)).toEqual([]);
	});
});

describe("losses of a receiver", () => {
	const faults = (body: object) => faultsOf(receiverLossesOperation, { dish: { diameterM: 2 }, ...body });
	const lit = { dish: undefined, absorbedPowerW: 1500 };
	const most = LIMITS.receiverStates.value;
	const side = Math.ceil(Math.sqrt(most)) + 1;
	const many = (from: number) => Array.from({ length: side }, (_, i) => from + i / 4);

	const cases: readonly Case[] = [
		["no light", { dish: undefined, receiver: { apertureDiameterM: 0.2 } }, ["", "contradictory"]],
		[
			"light twice",
			{ absorbedPowerW: 1500 },
			["/dish", "contradictory"],
			["/absorbedPowerW", "contradictory"],
		],
		["an aperture that no dish sizes", lit, ["/receiver/apertureDiameterM", "contradictory"]],
		[
			"an off-axis dish on a polar axis of no hemisphere",
			{ dish: { kind: "offsetPolar", mirrorAreaM2: 4 } },
			["/latitude", "contradictory"],
		],
		[
			"a receiver as large as the dish",
			{ receiver: { apertureDiameterM: 2 } },
			["/receiver/apertureDiameterM", "impossible"],
		],
		[
			"a hollow narrower than its opening",
			{ receiver: { apertureDiameterM: 0.2, innerDiameterM: 0.1 } },
			["/receiver/innerDiameterM", "contradictory"],
		],
		[
			"a tube without wall",
			{ receiver: { tube: { innerDiameterMm: 15 } } },
			["/receiver/tube/outerDiameterMm", "contradictory"],
		],
	];

	it.each(cases.map(row))("refuses %s", (_what, body, expected) => {
		expect(faults(body)).toEqual(expected);
	});

	it("refuses more combinations than one request may ask, at each list", () => {
		const body = { oilTemperatureC: many(40), windMPerS: many(0) };
		expect(faults(body)).toEqual(
			["/oilTemperatureC", "/windMPerS", "/tiltDeg"].map((pointer) => [pointer, "too_large"]),
		);
	});

	it.each([
		["of a dish", {}],
		["in light that is given", { ...lit, receiver: { apertureDiameterM: 0.2 } }],
		[
			"of an off-axis dish on a polar axis somewhere",
			{ dish: { kind: "offsetPolar", mirrorAreaM2: 4 }, latitude: -30 },
		],
	])("passes one %s", (_what, body) => {
		expect(faults(body)).toEqual([]);
	});
});

describe("optics of a dish", () => {
	const faults = (body: object) => faultsOf(dishOpticsOperation, { dish: { diameterM: 2 }, ...body });

	const cases: readonly Case[] = [
		["a dish without size", { dish: {} }, ["/dish", "contradictory"]],
		[
			"a focal length and a rim angle",
			{ dish: { diameterM: 2, focalLengthM: 1, rimAngleDeg: 45 } },
			["/dish/focalLengthM", "contradictory"],
			["/dish/rimAngleDeg", "contradictory"],
		],
		[
			"an efficiency line, which has no aperture",
			{ receiver: { kind: "efficiencyLine", opticalEfficiency: 0.7, lossCoefficientWPerK: 3 } },
			["/receiver/kind", "contradictory"],
		],
		[
			"one aperture of the curve as large as the dish",
			{ curveApertureDiameterM: [0.1, 2, 0.2] },
			["/curveApertureDiameterM/1", "impossible"],
		],
		[
			"an off-axis mirror too near its focus",
			{ dish: { kind: "offsetPolar", mirrorAreaM2: 8, focalLengthM: 1.2 }, latitude: 30 },
			["/dish/focalLengthM", "out_of_range"],
		],
	];

	it.each(cases.map(row))("refuses %s", (_what, body, expected) => {
		expect(faults(body)).toEqual(expected);
	});

	it("passes the least, and a curve of one's own", () => {
		expect(faults({})).toEqual([]);
		expect(faults({ curveApertureDiameterM: [0.1, 0.2] })).toEqual([]);
	});
});
