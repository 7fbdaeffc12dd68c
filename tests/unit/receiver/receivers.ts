import type { ReceiverConditions } from "../../../src/receiver/conditions.ts";
import type {
	CavityReceiver,
	EfficiencyLineReceiver,
	GlazedCoilReceiver,
	OpenCoilReceiver,
} from "../../../src/receiver/receiver.ts";

const tube = { innerDiameter: 0.013, outerDiameter: 0.015, length: 6 };
const insulation = { material: "mineralWool", thickness: 0.05, moisture: 0, surfaceEmittance: 0.3 };

export const cavity: CavityReceiver = {
	kind: "cavity",
	apertureDiameter: 0.15,
	innerDiameter: 0.2,
	depth: 0.2,
	absorptance: 0.95,
	emittance: 0.9,
	tube,
	insulation,
};

export const openCoil: OpenCoilReceiver = {
	kind: "openCoil",
	apertureDiameter: 0.2,
	absorptance: 0.95,
	emittance: 0.9,
	tube,
	insulation,
};

export const glazedCoil: GlazedCoilReceiver = {
	...openCoil,
	kind: "glazedCoil",
	coverTransmittance: 0.9,
	coverGap: 0.025,
};

/** Mawire & Taole, Energy for Sustainable Development 19 (2014) 162–169: an oil-filled cavity in a domestic deep dish. */
export const measured: EfficiencyLineReceiver = {
	kind: "efficiencyLine",
	opticalEfficiency: 0.52,
	lossCoefficient: 4.6,
	heldHeatCapacity: 2000,
};

export const tubes = [cavity, openCoil, glazedCoil] as const;
export const all = [cavity, openCoil, glazedCoil, measured] as const;

/** An oil at 150 °C on a mild day. */
export const mild: ReceiverConditions = {
	wallTemperature: 423.15,
	ambient: 298.15,
	wind: 2,
	pressure: 101_325,
	altitude: 0.8,
};
