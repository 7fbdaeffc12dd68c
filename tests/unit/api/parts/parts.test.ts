import { describe, expect, it } from "vitest";
import { hostel } from "../../../../api/demo/hostel.ts";
import { wireAssumed } from "../../../../api/parts/assumption.ts";
import { dayDesigns, dayPlan } from "../../../../api/parts/day-plan.ts";
import { WarmUpRequest } from "../../../../api/parts/day-request.ts";
import { Dish, sparseDish } from "../../../../api/parts/dish.ts";
import { valueAt } from "../../../../api/validation/schema-tree.ts";
import { appliedDefaults } from "../../../../api/wire/defaults.ts";
import { designDish } from "../../../../src/design/dish.ts";
import { offsetPolarAperture } from "../../../../src/dish/offset-polar.ts";
import { rimAngle } from "../../../../src/dish/paraboloid.ts";
import type { Plant } from "../../../../src/plant/plant.ts";

const least = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350, timeZone: "Africa/Casablanca" },
	date: "2025-01-15",
	dish: { diameterM: 2 },
	tank: { volumeL: 150 },
};

function planOf(body: object) {
	const request = WarmUpRequest.parse({ ...least, ...body });
	const { value, assumed } = dayPlan(request, 60 * request.seriesStepMin, dayDesigns(request));
	const note = (pointer: string) => assumed.find((one) => one.pointer === pointer)?.value;
	return { ...value, assumed, note };
}

const plantOf = (body: object): Plant => planOf(body).plant;
const drawsOf = (body: object) => planOf(body).task.draws;

const lagging = { material: "glassWool", thicknessMm: 40, moistFraction: 0.02, surfaceEmittance: 0.3 };
const siLagging = { material: "glassWool", thickness: 0.04, moisture: 0.02, surfaceEmittance: 0.3 };

/** An object with numbers as near to those expected as floating point comes. */
function expectClose(actual: object, expected: Readonly<Record<string, unknown>>, path = ""): void {
	for (const [key, value] of Object.entries(expected)) {
		const got = (actual as Record<string, unknown>)[key];
		if (typeof value === "number") expect(Math.abs((got as number) - value), path + key).toBeLessThan(1e-9);
		else if (typeof value === "object") expectClose(got as object, value as never, `${path}${key}.`);
		else expect(got, path + key).toBe(value);
	}
}

describe("what is sent in wire units reaches the core in SI", () => {
	it("site", () => {
		expectClose(plantOf({ site: { ...least.site, latitude: -45, longitude: 90, albedo: 0.6 } }).site, {
			latitude: -Math.PI / 4,
			longitude: Math.PI / 2,
			elevation: 2350,
			albedo: 0.6,
		});
	});

	it("dish", () => {
		const dish = {
			diameterM: 3,
			focalLengthM: 1.2,
			reflectance: 0.9,
			cleanliness: 0.8,
			slopeErrorMrad: 4,
			specularityMrad: 2,
			trackingErrorMrad: 6,
			blockedFraction: 0.1,
			lowestSunAltitudeDeg: 30,
		};
		expectClose(plantOf({ dish }).dish, {
			kind: "twoAxis",
			diameter: 3,
			focalLength: 1.2,
			reflectance: 0.9,
			cleanliness: 0.8,
			slopeError: 0.004,
			specularity: 0.002,
			trackingError: 0.006,
			blockedFraction: 0.1,
			lowestAltitude: Math.PI / 6,
		});
	});

	it("receiver", () => {
		const tube = { innerDiameterMm: 10, outerDiameterMm: 12, lengthM: 7 };
		const sizes = { apertureDiameterM: 0.2, absorptance: 0.9, emittance: 0.4, tube, insulation: lagging };
		const siSizes = {
			apertureDiameter: 0.2,
			absorptance: 0.9,
			emittance: 0.4,
			tube: { innerDiameter: 0.01, outerDiameter: 0.012, length: 7 },
			insulation: siLagging,
		};
		const cavity = { kind: "cavity", innerDiameterM: 0.3, depthM: 0.4, ...sizes };
		expectClose(plantOf({ receiver: cavity }).receiver, { ...siSizes, innerDiameter: 0.3, depth: 0.4 });
		const glazed = { kind: "glazedCoil", coverTransmittance: 0.8, coverGapMm: 30, ...sizes };
		expectClose(plantOf({ receiver: glazed }).receiver, {
			...siSizes,
			kind: "glazedCoil",
			coverTransmittance: 0.8,
			coverGap: 0.03,
		});
		const line = {
			kind: "efficiencyLine",
			opticalEfficiency: 0.7,
			lossCoefficientWPerK: 3,
			heldHeatKjPerK: 4,
		};
		expectClose(plantOf({ receiver: line }).receiver, {
			opticalEfficiency: 0.7,
			lossCoefficient: 3,
			heldHeatCapacity: 4000,
		});
	});

	it("loop", () => {
		const loop = {
			fluid: "propyleneGlycol40",
			supply: { lengthM: 6, innerDiameterMm: 16, outerDiameterMm: 18, insulation: lagging },
			return: { lengthM: 9 },
			fittingsLossFactor: 12,
			fittingsLossWPerK: 0.7,
			pump: {
				flowLPerMin: 6,
				powerW: 45,
				efficiency: 0.2,
				heatToFluid: 0.4,
				maximumPressureKpa: 250,
				casingLossWPerK: 0.5,
				heldHeatKjPerK: 3,
			},
			control: {
				startDifferenceK: 10,
				stopDifferenceK: 4,
				highLimitC: 70,
				oilLimitC: 80,
				hysteresisK: 6,
			},
			expansionL: 2,
		};
		expectClose(plantOf({ loop }).loop, {
			supply: { length: 6, innerDiameter: 0.016, outerDiameter: 0.018, insulation: siLagging },
			return: { length: 9 },
			fittingsLossFactor: 12,
			fittingsLossCoefficient: 0.7,
			pump: {
				flow: 1e-4,
				electricPower: 45,
				efficiency: 0.2,
				heatToFluid: 0.4,
				maximumPressure: 250_000,
				casingLossCoefficient: 0.5,
				heldHeatCapacity: 3000,
			},
			control: {
				startDifference: 10,
				stopDifference: 4,
				highLimit: 343.15,
				oilLimit: 353.15,
				hysteresis: 6,
			},
			expansionVolume: 0.002,
		});
	});

	it("coil and tank", () => {
		const coil = {
			innerDiameterMm: 10,
			outerDiameterMm: 12,
			lengthM: 8,
			coilDiameterM: 0.3,
			bottomHeight: 0.1,
			topHeight: 0.5,
		};
		const tank = {
			volumeL: 200,
			fillL: 180,
			heightM: 1.2,
			wallThicknessMm: 3,
			insulation: lagging,
			fittingsFactor: 1.5,
			inletHeight: 0.1,
			outletHeight: 0.9,
			startTemperatureC: [30, 20],
			vented: false,
			reliefPressureKpa: 300,
			surroundingsC: 12,
		};
		const plant = plantOf({ coil, tank });
		expectClose(plant.coil, {
			innerDiameter: 0.01,
			outerDiameter: 0.012,
			length: 8,
			coilDiameter: 0.3,
			bottom: 0.1,
			top: 0.5,
			gapResistance: 0,
		});
		expectClose(plant.tank, {
			fill: 0.18,
			height: 1.2,
			wallThickness: 0.003,
			insulation: siLagging,
			fittingsFactor: 1.5,
			inletHeight: 0.1,
			outletHeight: 0.9,
			startTemperatures: { 0: 303.15, 1: 293.15, length: 2 },
			reliefPressure: 300_000,
			surroundings: { kind: "indoors", temperature: 285.15 },
		});
	});

	it("task: local times, target, mains and step", () => {
		const { task } = planOf({
			startTime: "09:00",
			endTime: "17:30",
			targetTemperatureC: 55,
			targetAt: "top",
			stepS: 60,
			seriesStepMin: 10,
			draw: { mainsTemperatureC: 8 },
		});
		expectClose(task, {
			start: Date.UTC(2025, 0, 15, 8) / 1000, // Morocco keeps UTC + 1 h
			end: Date.UTC(2025, 0, 15, 16, 30) / 1000,
			step: 60,
			seriesStep: 600,
			target: { temperature: 328.15, at: "top" },
			mains: 281.15,
		});
	});

	it("clear sky", () => {
		const { weather } = planOf({ sky: { ambientMinC: 5, ambientMaxC: 5, windMPerS: 7 } });
		for (const air of weather.ambient) expect(air).toBeCloseTo(278.15, 9);
		expect(new Set(weather.wind)).toEqual(new Set([7]));
		const beam = (linkeTurbidity: unknown) => Math.max(...planOf({ sky: { linkeTurbidity } }).weather.beam);
		expect(beam(2)).toBeGreaterThan(beam(3));
		expect(beam(3)).toBeGreaterThan(beam(7));
	});

	it("measured sky, one value standing for a column", () => {
		const rows = ["2025-01-15T09:00:00+01:00", "2025-01-15T13:00:00+01:00", "2025-01-15T17:00:00+01:00"];
		const sky = { kind: "measured", time: rows, beamIrradianceWPerM2: [400, 800, 400], ambientC: -3 };
		const { weather, note } = planOf({ startTime: "10:00", endTime: "16:00", sky });
		expect(Math.max(...weather.beam)).toBeCloseTo(800, 6);
		expect(weather.beam[0]).toBeCloseTo(500, 6); // a quarter of the way from 400 to 800
		for (const air of weather.ambient) expect(air).toBeCloseTo(270.15, 9);
		expect(note("/sky/diffuseIrradianceWPerM2")).toBe(0);
	});
});

it("every number that the answer says it assumed has an effect when it is sent otherwise", () => {
	const asked = { ...least, draw: { draws: [{ time: "12:00", litres: 20 }], profile: "S" } };
	const bodies = [
		asked,
		{ ...asked, receiver: { kind: "glazedCoil" }, dish: { kind: "offsetPolar", mirrorAreaM2: 4 } },
		{ ...asked, tank: { volumeL: 150, vented: false } },
	];
	const shown = (body: object) => {
		const { plant, task, weather } = planOf(body);
		return JSON.stringify(
			[plant, task, [...weather.ambient], [...weather.wind], [...weather.beam]],
			(_, value) => (ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value),
		);
	};
	for (const body of bodies) {
		const before = shown(body);
		const taken = appliedDefaults(WarmUpRequest, body, WarmUpRequest.parse(body));
		const numbers = [...taken, ...planOf(body).assumed].filter(({ value }) => typeof value === "number");
		expect(numbers.length).toBeGreaterThan(40);
		for (const { pointer, value } of numbers) {
			const changed = structuredClone(body) as Record<string, unknown>;
			const keys = pointer.slice(1).split("/");
			let holder = changed;
			for (const key of keys.slice(0, -1)) {
				if (holder[key] === undefined) holder[key] = {};
				holder = holder[key] as Record<string, unknown>;
			}
			const smaller = (value as number) === 0 ? 0.1 : (value as number) * 0.9;
			holder[keys.at(-1)!] = pointer === "/tank/nodes" ? 8 : smaller;
			expect(valueAt(changed, keys), pointer).not.toBe(value);
			expect(shown(changed), pointer).not.toBe(before);
		}
	}
});

describe("a dish", () => {
	const dish = (body: object) => {
		const { design, assumed } = designDish(sparseDish(Dish.parse(body)));
		return { ...design, filled: wireAssumed(assumed) };
	};

	it("of so much area is as wide as a disc of it", () => {
		expect(dish({ apertureM2: Math.PI, rimAngleDeg: 45 })).toMatchObject({ diameter: 2 });
	});

	it("has its focus where the rim stands at the wanted angle, 45° where none is named", () => {
		const angled = dish({ diameterM: 2, rimAngleDeg: 90 });
		expect(angled.focalLength).toBeCloseTo(0.5, 12); // at 90° the focus lies in the plane of the rim: f = D/4
		expect(angled.filled).toEqual([]);
		const usual = dish({ diameterM: 2 });
		expect(rimAngle(2, usual.focalLength)).toBeCloseTo(Math.PI / 4, 12);
		expect(usual.filled).toMatchObject([{ pointer: "/dish/rimAngleDeg", value: 45 }]);
	});

	it.each([
		["apertureM2", 5.83, 5.83],
		["diameterM", 2, Math.PI],
	])("on a polar axis shows the sun its %s at the equinox", (name, value, aperture) => {
		const fixed = dish({ kind: "offsetPolar", [name]: value });
		if (fixed.kind !== "offsetPolar") throw new Error("another dish");
		expect(offsetPolarAperture(fixed.mirrorArea, 0.5, 0)).toBeCloseTo(aperture, 12);
	});

	it("on a polar axis and eight square metres has the published proportions", () => {
		// Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490: 8 m² of mirror, 5.83 m² at the equinox (from memory)
		const fixed = dish({ kind: "offsetPolar", apertureM2: 5.83 });
		expect(fixed).toMatchObject({ kind: "offsetPolar" });
		expect((fixed as { mirrorArea: number }).mirrorArea).toBeCloseTo(8, 1);
		expect(fixed.focalLength).toBeGreaterThan(2.6);
		expect(fixed.focalLength).toBeLessThan(2.9);
		expect(fixed.filled).toMatchObject([{ pointer: "/dish/focalLengthM" }]);
	});
});

describe("draws", () => {
	const day = { startTime: "00:00", endTime: "23:59" };

	it("of a list keep their order, each by its litres or its heat", () => {
		const draws = [
			{ time: "18:00", litres: 60, flowLPerMin: 9, temperatureC: 45 },
			{ time: "07:30", energyKwh: 2 },
		];
		expectClose(drawsOf({ ...day, draw: { draws, mixedTemperatureC: 38 } }), {
			0: {
				time: Date.UTC(2025, 0, 15, 17) / 1000,
				demand: { kind: "volume", volume: 0.06 },
				temperature: 318.15,
				flow: 1.5e-4,
			},
			1: {
				time: Date.UTC(2025, 0, 15, 6, 30) / 1000,
				demand: { kind: "energy", energy: 7.2e6 },
				temperature: 311.15,
				flow: 1e-4, // 6 L/min
			},
			length: 2,
		});
	});

	const heat = (draws: ReturnType<typeof drawsOf>) =>
		draws.reduce((sum, { demand }) => sum + (demand.kind === "energy" ? demand.energy : Number.NaN), 0) /
		3.6e6;

	// Q_ref and numbers of draws: Regulation (EU) 814/2013, Annex III, table 1
	it.each([
		["S", 2.1, 11],
		["M", 5.845, 23],
		["L", 11.655, 24],
	])("of profile %s come to its published heat, times the households", (profile, published, count) => {
		for (const scale of [1, 3.5]) {
			const draws = drawsOf({ ...day, draw: { profile, scale } });
			expect(draws).toHaveLength(count);
			expect(heat(draws)).toBeCloseTo(published * scale, 9);
		}
	});

	it("of a profile begin within the run, in local time", () => {
		const draws = drawsOf({ startTime: "12:00", endTime: "18:00", draw: { profile: "S" } });
		// of profile S only 12:45 lies from noon to before six: 0.315 kWh at 4 L/min, to reach 55 °C
		expectClose(draws, {
			0: {
				time: Date.UTC(2025, 0, 15, 11, 45) / 1000,
				demand: { kind: "energy", energy: 0.315 * 3.6e6 },
				temperature: 328.15,
				flow: 4 / 60_000,
			},
			length: 1,
		});
	});

	it("of a profile come on top of a list", () => {
		const listed = [{ time: "08:00", litres: 10 }];
		expect(drawsOf({ ...day, draw: { profile: "S", draws: listed } })).toHaveLength(12);
	});
});

it("the hostel is what it says it is", () => {
	const { plant, task } = planOf(hostel.request);
	expectClose(plant.tank, { fill: 0.2, surroundings: { temperature: 283.15 } });
	expectClose(plant.site, { elevation: 2350 });
	expectClose(task, { mains: 280.15, target: { temperature: 333.15 } });
	expect(task.draws).toHaveLength(1);
});
