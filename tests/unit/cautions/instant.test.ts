import { describe, expect, it } from "vitest";
import { wireCaution } from "../../../api/parts/caution.ts";
import { fromSi } from "../../../api/wire/units.ts";
import type { DayAir } from "../../../src/cautions/caution.ts";
import type { InstantWalls } from "../../../src/cautions/instant.ts";
import { instantCautions } from "../../../src/cautions/instant-cautions.ts";
import { instantOutcome } from "../../../src/instant/outcome.ts";
import type { InstantTask } from "../../../src/instant/task.ts";
import { duty, heater, outletPipe, task, vessel } from "../instant/heaters.ts";
import { plant } from "../plant/plants.ts";

const celsius = (temperature: number) => temperature + 273.15;
const stated = (coldest: number): DayAir => ({ coldest: celsius(coldest), source: "stated" });
const dripFeed = { ...vessel, coil: { ...vessel.coil, length: 5 } };

const metal: InstantWalls = { outlet: "copper", vessel: "steel", coil: "copper" };
type Change = Partial<InstantTask> & { readonly air?: DayAir; readonly walls?: InstantWalls };

function found({ air = stated(10), walls = metal, ...change }: Change) {
	const asked = { ...task, ...change };
	const outcome = instantOutcome(heater, asked);
	return instantCautions({ dish: plant.dish, heater, task: asked, air, walls, outcome });
}

const charged = (charge: number): Partial<InstantTask> => ({
	arrangement: { kind: "vessel", vessel: { ...dripFeed, charge: celsius(charge) }, start: celsius(20) },
});
const assumed: DayAir = { coldest: celsius(10), source: "assumed" };

const piped = (thickness: number, material = "mineralWool"): Partial<InstantTask> => {
	const outlet = outletPipe(3, thickness);
	return {
		arrangement: { kind: "direct", outlet: { ...outlet, insulation: { ...outlet.insulation, material } } },
	};
};

/** Water of a line at 2 bar above the air of 2350 m boils at about 131 °C. */
const HAZARDS: readonly (readonly [
	code: string,
	severity: string,
	present: Change,
	absent: Change | undefined,
])[] = [
	["concentratedLight", "danger", {}, undefined],
	["closedLine", "danger", {}, undefined],
	["tapRunsHot", "danger", {}, undefined],
	["dishInWind", "warning", {}, undefined],
	["standingWaterBoils", "danger", {}, charged(120)],
	["steamInCoil", "danger", charged(145), charged(120)],
	["steamAtTap", "danger", { wantedFlow: 0.3 / 60 }, { wantedFlow: 0.8 / 60 }],
	["steamAtTap", "danger", { duty: { ...duty, wanted: celsius(95) } }, {}],
	["receiverFreezes", "danger", { air: stated(4) }, { air: stated(6) }],
	["coilFreezes", "danger", { ...charged(120), air: stated(4) }, { ...charged(120), air: stated(6) }],
	["mayFreeze", "danger", { air: assumed }, {}],
	["mayFreeze", "danger", { ...charged(120), air: assumed }, charged(120)],
	["hotSurface", "warning", { duty: { ...duty, wanted: celsius(85) }, ...piped(0) }, piped(0.025)],
	["laggingTooHot", "warning", piped(0.02, "polyethyleneFoam"), piped(0.02)],
	["plasticTooHot", "danger", { walls: { ...metal, outlet: "polyethylene" }, ...piped(0.02) }, piped(0.02)],
	["plasticTooHot", "danger", { walls: { ...metal, vessel: "polyethylene" }, ...charged(120) }, charged(120)],
	["plasticTooHot", "danger", { walls: { ...metal, coil: "polyethylene" }, ...charged(120) }, charged(120)],
	["fluidAboveFlashPoint", "danger", charged(120), {}],
	["singleWall", "warning", charged(120), {}],
	["pumpStops", "danger", charged(120), {}],
];

describe.each(HAZARDS)("%s of an instant heater", (code, severity, present) => {
	it("arises with its severity, in words that defer to those who may judge it", () => {
		const caution = found(present).find((one) => one.code === code)!;
		expect(caution).toMatchObject({ code, severity });
		expect(caution.message).toMatch(/local|licensed|qualified|the law requires/);
		expect(wireCaution(caution).message).not.toMatch(/[{}]|NaN|undefined/);
	});
});

it.each(HAZARDS.flatMap(([code, , , absent]) => (absent ? [[code, absent] as const] : [])))(
	"%s does not arise without its cause",
	(code, absent) => {
		expect(found(absent).map((one) => one.code)).not.toContain(code);
	},
);

it("tells how hot the wanted flow comes to the tap, by the heat of the sun over that flow", () => {
	const wantedFlow = 0.3 / 60; // [kg/s]
	const asked = { ...task, wantedFlow };
	const outcome = instantOutcome(heater, asked);
	const hot = wireCaution(found({ wantedFlow }).find(({ code }) => code === "steamAtTap")!);
	const { steady } = outcome.best;
	const power = steady.kind === "flows" ? steady.power : Number.NaN; // a hotter receiver gives a little less
	const rise = power / (wantedFlow * 4200);
	expect(hot.parameters.tapTemperatureC).toBeGreaterThan(fromSi.celsius(task.duty.cold) + 0.85 * rise);
	expect(hot.parameters.tapTemperatureC).toBeLessThan(fromSi.celsius(task.duty.cold) + rise);
	expect(hot.parameters.openBoilingPointC).toBeLessThan(100);
});

it("cautions of an instant heater come most serious first", () => {
	const order = ["danger", "warning", "info"];
	const ranks = found(charged(145)).map(({ severity }) => order.indexOf(severity));
	expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
});
