import { absorberWidth, narrowestAbsorber } from "../receiver/narrowest-absorber.ts";
import { proportionedReceiver } from "../receiver/proportions.ts";
import {
	type AbsorberTube,
	type CavityReceiver,
	type EfficiencyLineReceiver,
	type GlazedCoilReceiver,
	hasCavity,
	type OpenCoilReceiver,
	type TubeReceiver,
} from "../receiver/receiver.ts";

/** Omitted sizes of a receiver follow from its aperture; `auto` derives the aperture from the dish. */
interface Sizes {
	readonly apertureDiameter: number | "auto"; // [m]
	readonly tube: Omit<AbsorberTube, "length"> & { readonly length?: number | undefined /* [m] */ };
}

type Sized = "apertureDiameter" | "tube";

export interface SparseCavity extends Omit<CavityReceiver, Sized | "innerDiameter" | "depth">, Sizes {
	readonly innerDiameter?: number | undefined; // of the interior [m]
	readonly depth?: number | undefined; // of the interior [m]
}

export type SparseSpiral = (Omit<OpenCoilReceiver, Sized> | Omit<GlazedCoilReceiver, Sized>) & Sizes;

export type SparseTubeReceiver = SparseCavity | SparseSpiral;

export type SparseReceiver = SparseTubeReceiver | EfficiencyLineReceiver;

/** Width of an absorber of stated size, and the narrowest that its tube can be wound to [m]; undefined if the design sets the size. */
export function statedAbsorber(
	receiver: SparseTubeReceiver,
): { readonly width: number; readonly narrowest: number } | undefined {
	const interior = hasCavity(receiver) ? receiver.innerDiameter : undefined;
	const { apertureDiameter } = receiver;
	if (interior === undefined && apertureDiameter === "auto") return undefined;
	const open = unsizedReceiver(receiver);
	const width = interior ?? absorberWidth(proportionedReceiver(open, apertureDiameter as number));
	return { width, narrowest: narrowestAbsorber(open) };
}

const ANY = 1; // [m] of sizes that `proportionedReceiver` sets

/** Surfaces, tube and insulation of a receiver whose sizes are still to be set. */
export function unsizedReceiver(receiver: SparseTubeReceiver): TubeReceiver {
	const sizes = { apertureDiameter: ANY, tube: { ...receiver.tube, length: ANY } };
	return hasCavity(receiver)
		? { ...receiver, ...sizes, innerDiameter: ANY, depth: ANY }
		: { ...receiver, ...sizes };
}
