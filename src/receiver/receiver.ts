import type { Insulation } from "../heat/insulation.ts";

/** The tube in which the fluid is heated. */
export interface AbsorberTube {
	readonly innerDiameter: number; // [m]
	readonly outerDiameter: number; // [m]
	readonly length: number; // [m]
}

/** A cavity whose wall is a coiled tube, insulated outside, lit through a round aperture. */
export interface CavityReceiver {
	readonly kind: "cavity";
	readonly apertureDiameter: number; // [m]
	readonly innerDiameter: number; // of the interior [m]
	readonly depth: number; // of the interior [m]
	readonly absorptance: number;
	readonly emittance: number;
	readonly tube: AbsorberTube;
	readonly insulation: Insulation;
}

/** A bare flat spiral of tube that faces the dish, insulated behind. */
export interface OpenCoilReceiver {
	readonly kind: "openCoil";
	readonly apertureDiameter: number; // of the spiral [m]
	readonly absorptance: number;
	readonly emittance: number;
	readonly tube: AbsorberTube;
	readonly insulation: Insulation;
}

/** A flat spiral of tube behind a pane. */
export interface GlazedCoilReceiver {
	readonly kind: "glazedCoil";
	readonly apertureDiameter: number; // of the spiral [m]
	readonly absorptance: number;
	readonly emittance: number;
	readonly coverTransmittance: number;
	readonly coverGap: number; // [m]
	readonly tube: AbsorberTube;
	readonly insulation: Insulation;
}

/** A dish and receiver measured together: useful = opticalEfficiency·A·G − lossCoefficient·(T_out − T_air). */
export interface EfficiencyLineReceiver {
	readonly kind: "efficiencyLine";
	readonly opticalEfficiency: number; // on the beam that enters the dish's aperture, 0–1
	readonly lossCoefficient: number; // [W/K], based on the temperature of the leaving fluid
	readonly heldHeatCapacity: number; // of fluid and metal at the focus [J/K]
}

/** The kinds with a described absorber tube. */
export type TubeReceiver = CavityReceiver | OpenCoilReceiver | GlazedCoilReceiver;

export type Receiver = TubeReceiver | EfficiencyLineReceiver;

type Kind = Receiver["kind"];

/** Parts of each kind. */
const PARTS = {
	cavity: { tube: true, hollow: true, pane: false },
	openCoil: { tube: true, hollow: false, pane: false },
	glazedCoil: { tube: true, hollow: false, pane: true },
	efficiencyLine: { tube: false, hollow: false, pane: false },
} as const satisfies Record<
	Kind,
	{ readonly tube: boolean; readonly hollow: boolean; readonly pane: boolean }
>;

type KindWith<Part extends keyof (typeof PARTS)[Kind]> = {
	[K in Kind]: (typeof PARTS)[K][Part] extends true ? K : never;
}[Kind];

/** Whether tube, surfaces and insulation of the absorber are described; else it was measured together with its dish. */
export function hasTube<R extends { readonly kind: Kind }>(
	receiver: R,
): receiver is Extract<R, { readonly kind: KindWith<"tube"> }> {
	return PARTS[receiver.kind].tube;
}

/** Whether the light enters a cavity. */
export function hasCavity<R extends { readonly kind: Kind }>(
	receiver: R,
): receiver is Extract<R, { readonly kind: KindWith<"hollow"> }> {
	return PARTS[receiver.kind].hollow;
}

/** Whether a pane covers the absorber. */
export function hasPane<R extends { readonly kind: Kind }>(
	receiver: R,
): receiver is Extract<R, { readonly kind: KindWith<"pane"> }> {
	return PARTS[receiver.kind].pane;
}
