import { z } from "@hono/zod-openapi";
import {
	derived,
	handbook,
	hasHollow,
	hasTube,
	mirrorWidth,
	practice,
	type SparseReceiver,
	type SparseTubeReceiver,
	statedAbsorber,
	unconfirmed,
} from "../../src/index.ts";
import { contradictory, fourDigits, impossible, outOfRange, type Rule } from "../validation/rule.ts";
import { assume, part } from "../wire/defaults.ts";
import { kilojoulesPerKelvin, metres, millimetres, ratio, toSi, wattsPerKelvin } from "../wire/units.ts";
import type { WithDish } from "./dish.ts";
import { coreInsulation, insulation } from "./insulation.ts";
import { tube, tubeWall } from "./tube.ts";

const AbsorberTube = z
	.strictObject({
		...tube(13, 15, practice("15 mm copper tube, wide enough for cold oil")),
		lengthM: metres(
			"Along the tube. Left out: as much as covers the absorber, turn against turn.",
			0.2,
			500,
		).optional(),
	})
	.openapi("AbsorberTube", { description: "The tube in which the fluid takes up heat." });

const ReceiverInsulation = insulation(
	"mineralWool",
	50,
	practice("the receiver's shell stands far above what foam bears"),
	300,
).openapi("ReceiverInsulation", { description: "Lagging around or behind the absorber." });

const aperture = assume(
	z.union([metres("Of the opening that the light enters.", 0.01, 3), z.literal("auto")]).meta({
		description:
			"Diameter of the opening or disc that the light falls on, or `auto` for the best trade between light spilled and heat lost, no wider than a hollow of given size. The answer's `design` tells the size chosen.",
		"x-unit": "m",
	}),
	"auto",
	derived(
		"the best trade between light spilled and heat lost, at 800 W/m² of beam, fluid at 80 °C, air at 20 °C, wind of 2 m/s and the sun 45° high; and no less than the tube can be wound to. A flat spiral is widened until the film of fluid at rest in full sun would stay below its limit in evenly spread light; the light falls on a spot, so the inner turns get hotter all the same",
	),
);

const surface = {
	apertureDiameterM: aperture,
	absorptance: assume(
		ratio("Share of sunlight that the absorber takes up.", 0.05, 1),
		0.94,
		unconfirmed(
			handbook("black paint, 0.92–0.97", "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4"),
		),
	),
	emittance: assume(
		ratio("Of the absorber, for heat radiation.", 0.02, 1),
		0.9,
		unconfirmed(
			handbook("black paint, 0.86–0.94", "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4"),
		),
	),
	tube: part(AbsorberTube),
	insulation: part(ReceiverInsulation),
};

/** Not a component of its own: an object whose `kind` may be left out cannot stand behind a discriminator. */
const CavityReceiver = z.strictObject({
	kind: assume(
		z
			.literal("cavity")
			.meta({ description: "A lagged hollow, its wall a coiled tube, lit through a round opening." }),
		"cavity",
		practice("it loses least to the wind"),
	),
	innerDiameterM: metres(
		"Of the hollow. Left out: 1.3 openings, or as much as keeps the film of fluid at rest in full sun below its limit in evenly spread light.",
		0.02,
		5,
	).optional(),
	depthM: metres("Of the hollow. Left out: as deep as wide.", 0.02, 5).optional(),
	...surface,
});

const OpenCoilReceiver = z
	.strictObject({
		kind: z
			.literal("openCoil")
			.meta({ description: "A flat spiral of tube facing the dish bare, lagged behind." }),
		...surface,
	})
	.openapi("OpenCoilReceiver");

const GlazedCoilReceiver = z
	.strictObject({
		kind: z.literal("glazedCoil").meta({ description: "The flat spiral behind a pane." }),
		...surface,
		coverTransmittance: assume(
			ratio("Share of sunlight that passes the pane.", 0.05, 1),
			0.9,
			practice("4 mm of low-iron glass"),
		),
		coverGapMm: assume(
			millimetres("Between pane and spiral.", 2, 200),
			25,
			practice("wide enough for the pane to stay cool, narrow enough to hold the air still"),
		),
	})
	.openapi("GlazedCoilReceiver");

const EfficiencyLineReceiver = z
	.strictObject({
		kind: z.literal("efficiencyLine").meta({
			description:
				"A dish and receiver that were measured together: heat = opticalEfficiency × beam on the aperture − lossCoefficient × (fluid leaving − air).",
		}),
		opticalEfficiency: ratio("On the beam that enters the dish's aperture.", 0.01, 1),
		lossCoefficientWPerK: wattsPerKelvin("Against the temperature of the fluid that leaves.", 0, 1000),
		heldHeatKjPerK: assume(
			kilojoulesPerKelvin("Heat that fluid and metal at the focus hold.", 0.01, 1000),
			2,
			practice("half a litre of oil and 3 kg of metal"),
		),
	})
	.openapi("EfficiencyLineReceiver");

export const Receiver = z
	.discriminatedUnion("kind", [CavityReceiver, OpenCoilReceiver, GlazedCoilReceiver, EfficiencyLineReceiver])
	.openapi("Receiver", {
		description: "What stands in the focus. Without `kind` a cavity.",
		example: { kind: "cavity", apertureDiameterM: 0.12, absorptance: 0.94 },
	});

export type Receiver = z.output<typeof Receiver>;
type TubeReceiver = Extract<Receiver, { readonly tube: unknown }>;

/** The receiver as the core takes it, what the request leaves out still open. */
export function sparseReceiver(receiver: Receiver): SparseReceiver {
	if (hasTube(receiver)) return sparseTubeReceiver(receiver);
	return {
		kind: receiver.kind,
		opticalEfficiency: receiver.opticalEfficiency,
		lossCoefficient: receiver.lossCoefficientWPerK,
		heldHeatCapacity: toSi.kilojoules(receiver.heldHeatKjPerK),
	};
}

function sparseTubeReceiver(receiver: TubeReceiver): SparseTubeReceiver {
	const common = {
		apertureDiameter: receiver.apertureDiameterM,
		absorptance: receiver.absorptance,
		emittance: receiver.emittance,
		insulation: coreInsulation(receiver.insulation),
		tube: {
			innerDiameter: toSi.millimetres(receiver.tube.innerDiameterMm),
			outerDiameter: toSi.millimetres(receiver.tube.outerDiameterMm),
			length: receiver.tube.lengthM,
		},
	};
	switch (receiver.kind) {
		case "cavity":
			return {
				kind: "cavity",
				...common,
				innerDiameter: receiver.innerDiameterM,
				depth: receiver.depthM,
			};
		case "openCoil":
			return { kind: "openCoil", ...common };
		case "glazedCoil":
			return {
				kind: "glazedCoil",
				...common,
				coverTransmittance: receiver.coverTransmittance,
				coverGap: toSi.millimetres(receiver.coverGapMm),
			};
		default:
			return receiver satisfies never;
	}
}

interface WithReceiver {
	readonly receiver: Receiver;
}

/** The receiver is smaller than the dish that lights it. */
export const receiverWithinDish: Rule<WithReceiver, WithDish> = ({ receiver }, { dish }) => {
	if (!hasTube(receiver) || receiver.apertureDiameterM === "auto" || !dish) return [];
	const across = mirrorWidth(dish);
	return receiver.apertureDiameterM >= across
		? [
				impossible(
					"/receiver/apertureDiameterM",
					`a receiver of ${fourDigits(receiver.apertureDiameterM)} m is as large as the dish of ${fourDigits(across)} m that is to light it`,
				),
			]
		: [];
};

/** A hollow is at least as wide as its opening. */
export const openingWithinCavity: Rule<WithReceiver> = ({ receiver }) => {
	if (!hasHollow(receiver) || receiver.innerDiameterM === undefined) return [];
	const opening = receiver.apertureDiameterM;
	return opening !== "auto" && receiver.innerDiameterM < opening
		? [
				contradictory(
					"/receiver/innerDiameterM",
					`the hollow of ${fourDigits(receiver.innerDiameterM)} m is narrower than its opening of ${fourDigits(opening)} m`,
				),
			]
		: [];
};

/** A receiver of stated size leaves its tube room to be wound. */
export const tubeWindable: Rule<WithReceiver> = ({ receiver }) => {
	if (!hasTube(receiver)) return [];
	const absorber = statedAbsorber(sparseTubeReceiver(receiver));
	if (!absorber || absorber.width >= absorber.narrowest) return [];
	const hollow = hasHollow(receiver) && receiver.innerDiameterM !== undefined;
	const detail = `a tube of ${fourDigits(receiver.tube.innerDiameterMm)} mm bore is hardly wound to an absorber ${fourDigits(absorber.width)} m wide; the narrowest is ${fourDigits(absorber.narrowest)} m`;
	return [outOfRange(`/receiver/${hollow ? "innerDiameterM" : "apertureDiameterM"}`, detail)];
};

/** The receiver's tube is wider outside than inside. */
export const receiverTubeWall: Rule<WithReceiver> = ({ receiver }) =>
	hasTube(receiver) ? tubeWall("/receiver/tube", receiver.tube) : [];
