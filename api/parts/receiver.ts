import { z } from "@hono/zod-openapi";
import {
	derived,
	handbook,
	hasCavity,
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
			"Length of the receiver's tube. If omitted: as much as covers the absorber, turn against turn.",
			0.2,
			500,
		).optional(),
	})
	.openapi("AbsorberTube", { description: "The tube of the receiver, in which the fluid is heated." });

const ReceiverInsulation = insulation(
	"mineralWool",
	50,
	practice("the receiver's shell gets much hotter than foam withstands"),
	300,
).openapi("ReceiverInsulation", { description: "Insulation around or behind the absorber." });

const aperture = assume(
	z.union([metres("Diameter of the opening that the light enters.", 0.01, 3), z.literal("auto")]).meta({
		description:
			"Diameter of the receiver's opening or disc, or `auto` for the best trade-off between spilled light and heat loss. `auto` is never wider than the `innerDiameterM` sent. `design` in the response has the diameter chosen.",
		"x-unit": "m",
	}),
	"auto",
	derived(
		"the best trade-off between spilled light and heat loss, but wide enough to wind the tube. The conditions are 800 W/m² of beam, fluid at 80 °C, air at 20 °C, wind of 2 m/s and the sun 45° high. A flat spiral is widened until fluid at rest in full sun would stay below its film limit in evenly spread light. But the light falls on a spot, so the inner turns get hotter",
	),
);

const surface = {
	apertureDiameterM: aperture,
	absorptance: assume(
		ratio("Solar absorptance of the absorber.", 0.05, 1),
		0.94,
		unconfirmed(
			handbook("black paint, 0.92–0.97", "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4"),
		),
	),
	emittance: assume(
		ratio("Thermal emittance of the absorber.", 0.02, 1),
		0.9,
		unconfirmed(
			handbook("black paint, 0.86–0.94", "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4"),
		),
	),
	tube: part(AbsorberTube),
	insulation: part(ReceiverInsulation),
};

/** Not a component of its own: an object whose `kind` may be omitted cannot have a discriminator. */
const CavityReceiver = z.strictObject({
	kind: assume(
		z.literal("cavity").meta({
			description: "An insulated cavity with a coiled tube as its wall, lit through a round opening.",
		}),
		"cavity",
		practice("loses the least heat to the wind"),
	),
	innerDiameterM: metres(
		"Inner diameter of the cavity. If omitted: 1.3 times the opening, or as wide as keeps fluid at rest in full, evenly spread sun below its film limit.",
		0.02,
		5,
	).optional(),
	depthM: metres(
		"Inner depth of the cavity. If omitted: the same as its inner diameter.",
		0.02,
		5,
	).optional(),
	...surface,
});

const OpenCoilReceiver = z
	.strictObject({
		kind: z
			.literal("openCoil")
			.meta({ description: "A flat spiral of bare tube facing the dish, insulated behind." }),
		...surface,
	})
	.openapi("OpenCoilReceiver");

const GlazedCoilReceiver = z
	.strictObject({
		kind: z
			.literal("glazedCoil")
			.meta({ description: "A flat spiral of tube behind a glass cover, insulated behind." }),
		...surface,
		coverTransmittance: assume(
			ratio("Solar transmittance of the glass cover.", 0.05, 1),
			0.9,
			practice("4 mm of low-iron glass"),
		),
		coverGapMm: assume(
			millimetres("Gap between glass cover and spiral.", 2, 200),
			25,
			practice("wide enough to keep the glass cool, narrow enough to keep the air still"),
		),
	})
	.openapi("GlazedCoilReceiver");

const EfficiencyLineReceiver = z
	.strictObject({
		kind: z.literal("efficiencyLine").meta({
			description:
				"A dish and receiver that were measured together: heat = opticalEfficiency × beam on the aperture − lossCoefficient × (fluid leaving − air).",
		}),
		opticalEfficiency: ratio(
			"Optical efficiency, relative to the beam that enters the dish's aperture.",
			0.01,
			1,
		),
		lossCoefficientWPerK: wattsPerKelvin(
			"Heat loss coefficient, for the temperature difference between the fluid leaving and the air.",
			0,
			1000,
		),
		heldHeatKjPerK: assume(
			kilojoulesPerKelvin("Heat capacity of fluid and metal at the focus.", 0.01, 1000),
			2,
			practice("half a litre of oil and 3 kg of metal"),
		),
	})
	.openapi("EfficiencyLineReceiver");

export const Receiver = z
	.discriminatedUnion("kind", [CavityReceiver, OpenCoilReceiver, GlazedCoilReceiver, EfficiencyLineReceiver])
	.openapi("Receiver", {
		description: "The receiver in the focus of the dish. If `kind` is omitted, a cavity.",
		example: { kind: "cavity", apertureDiameterM: 0.12, absorptance: 0.94 },
	});

export type Receiver = z.output<typeof Receiver>;
type TubeReceiver = Extract<Receiver, { readonly tube: unknown }>;

/** The receiver for the core, with omitted values left to the design. */
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
					`must be smaller than the dish (${fourDigits(across)} m); ${fourDigits(receiver.apertureDiameterM)} m is not`,
				),
			]
		: [];
};

/** A cavity is at least as wide as its opening. */
export const openingWithinCavity: Rule<WithReceiver> = ({ receiver }) => {
	if (!hasCavity(receiver) || receiver.innerDiameterM === undefined) return [];
	const opening = receiver.apertureDiameterM;
	return opening !== "auto" && receiver.innerDiameterM < opening
		? [
				contradictory(
					"/receiver/innerDiameterM",
					`must be at least apertureDiameterM (${fourDigits(opening)} m); ${fourDigits(receiver.innerDiameterM)} m is not`,
				),
			]
		: [];
};

/** A receiver of stated size is wide enough to wind its tube. */
export const tubeWindable: Rule<WithReceiver> = ({ receiver }) => {
	if (!hasTube(receiver)) return [];
	const absorber = statedAbsorber(sparseTubeReceiver(receiver));
	if (!absorber || absorber.width >= absorber.narrowest) return [];
	const interior = hasCavity(receiver) && receiver.innerDiameterM !== undefined;
	const field = interior ? "innerDiameterM" : "apertureDiameterM";
	const detail = `a tube with an inner diameter of ${fourDigits(receiver.tube.innerDiameterMm)} mm cannot be wound to an absorber ${fourDigits(absorber.width)} m wide; send a larger receiver.${field}, for at least ${fourDigits(absorber.narrowest)} m`;
	return [outOfRange(`/receiver/${field}`, detail)];
};

/** The receiver's tube is wider outside than inside. */
export const receiverTubeWall: Rule<WithReceiver> = ({ receiver }) =>
	hasTube(receiver) ? tubeWall("/receiver/tube", receiver.tube) : [];
