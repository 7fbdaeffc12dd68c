import type { CautionRule } from "./caution.ts";

/** Wind on a sail, water on a roof. */
export const structure: CautionRule = ({ plant: { dish, tank } }) => [
	{
		code: "windAndWeight",
		severity: "warning",
		parameters: {
			mirrorArea: {
				kind: "area",
				value: dish.kind === "twoAxis" ? (Math.PI / 4) * dish.diameter ** 2 : dish.mirrorArea,
			},
			water: { kind: "volume", value: tank.fill },
		},
		message:
			"A dish of {mirrorArea} is a sail, and {water} of water weigh a kilogram a litre. A structural engineer must prove roof, mast and anchors for wind, snow and quake to your local building code; the dish must stow itself in a storm.",
	},
];
