import { describe, expect, it } from "vitest";
import type { Answer, Body } from "../../sdk/index.ts";
import { raykettle } from "./service.ts";

type Caution = Answer<"warmUpTank">["cautions"][number];

const codes = (cautions: readonly Caution[]) => cautions.map(({ code }) => code);
const ofCode = (cautions: readonly Caution[], code: string) => cautions.filter((one) => one.code === code);

const dish = { diameterM: 1.8, focalLengthM: 0.675 };
const site = { latitude: 31.2, longitude: -7.9, elevationM: 2350 };
const day: Body<"warmUpTank"> = { site, date: "2026-01-15", dish, tank: { volumeL: 150 } };
const heater: Body<"assessInstantHeater"> = { site, dish, wantedTemperatureC: 40 };

describe.each(["openCoil", "glazedCoil"] as const)("the spot of light on a %s", (kind) => {
	const receiver = { kind };
	const answers = async () => [
		await raykettle.warmUpTank({ ...day, receiver }),
		await raykettle.rankImprovements({ ...day, receiver }),
		await raykettle.receiverLosses({ dish, receiver }),
		await raykettle.assessInstantHeater({ ...heater, receiver }),
	];

	it("is a danger wherever its temperatures are, as bright as the optics of the dish in full sun", async () => {
		const { focalSpot } = await raykettle.dishOptics({ dish, receiver, beamIrradianceWPerM2: 1000 });
		for (const { cautions } of await answers()) {
			const [caution, ...more] = ofCode(cautions, "flatCoilInFocus");
			expect(more).toEqual([]);
			expect(caution).toMatchObject({ severity: "danger" });
			expect(caution!.parameters.peakIrradianceWPerM2).toBeCloseTo(focalSpot.peakIrradianceWPerM2, 0);
			expect(caution!.message).toMatch(/ \d+ kW\/m².*cavity.*licensed/);
		}
	});

	it("stays a danger on the widest disc, and in light given without a dish", async () => {
		const wide = await raykettle.receiverLosses({ dish, receiver: { kind, apertureDiameterM: 1.5 } });
		expect(codes(wide.cautions)).toContain("flatCoilInFocus");
		const given = { absorbedPowerW: 900, receiver: { kind, apertureDiameterM: 0.25 } };
		const [caution] = ofCode((await raykettle.receiverLosses(given)).cautions, "flatCoilInFocus");
		expect(caution).toMatchObject({ severity: "danger", parameters: {} });
	});

	it("is nowhere said to be kept from charring by the size of its disc", async () => {
		const { assumed } = await raykettle.warmUpTank({ ...day, receiver });
		const { why } = assumed.find(({ pointer }) => pointer === "/receiver/apertureDiameterM")!;
		expect(why).not.toMatch(/char/);
		expect(why).toMatch(/the light falls on a spot/);
	});
});

it("a cavity and a measured dish have no flat coil to burn", async () => {
	const measured = { kind: "efficiencyLine", opticalEfficiency: 0.7, lossCoefficientWPerK: 3 } as const;
	for (const receiver of [{}, measured])
		expect(codes((await raykettle.warmUpTank({ ...day, receiver })).cautions)).not.toContain(
			"flatCoilInFocus",
		);
});
