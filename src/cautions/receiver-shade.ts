import type { CautionRule } from "./caution.ts";

/** A receiver that shades more of its dish than was allowed for. */
export const receiverShade: CautionRule = ({ plant: { dish, receiver } }) => {
	if (dish.kind !== "twoAxis" || receiver.kind === "efficiencyLine") return [];
	const bare = receiver.kind === "cavity" ? receiver.innerDiameter : receiver.apertureDiameter;
	const outer = bare + 2 * (receiver.tube.outerDiameter + receiver.insulation.thickness);
	const shade = Math.min(1, (outer / dish.diameter) ** 2);
	if (shade <= dish.blockedFraction) return [];
	return [
		{
			code: "receiverShade",
			severity: "info",
			parameters: {
				outerDiameter: { kind: "length", value: outer },
				shade: { kind: "ratio", value: shade },
				blocked: { kind: "ratio", value: dish.blockedFraction },
			},
			message:
				"With its lagging the receiver is {outerDiameter} wide and shades {shade} of the aperture; {blocked} was allowed for shade. The answer is too bright by the difference: state a larger blocked fraction, or have the dish's maker or a licensed engineer slim the receiver.",
		},
	];
};
