/** Core's name of each uncertain input, by the wire's: those that a day and an instant heater share. */
const SHARED = {
	linkeTurbidity: "turbidity",
	measuredIrradiance: "measuredBeam",
	reflectance: "reflectance",
	cleanliness: "cleanliness",
	slopeError: "slopeError",
	absorptance: "absorptance",
	opticalEfficiency: "opticalEfficiency",
	lossCoefficient: "lossCoefficient",
	receiverConvection: "receiverConvection",
	tankLoss: "tankLoss",
	pumpFlow: "pumpFlow",
	ambientK: "ambient",
	wind: "wind",
	coldWaterK: "coldWater",
} as const;

export const DAY_INPUTS = inputNames({ ...SHARED, coilFilm: "coilFilm", laggingLoss: "laggingLoss" });
export const INSTANT_INPUTS = inputNames({
	...SHARED,
	laggingLoss: "laggingLoss",
	coilTransfer: "coilTransfer",
});

/** Wire names of the inputs, with conversions to the core and back. A spread is the same number on both sides. */
function inputNames<const Names extends Readonly<Record<string, string>>>(names: Names) {
	type Wire = keyof Names & string;
	const wire = Object.keys(names) as [Wire, ...Wire[]];
	return {
		wire,
		toCore: (spreads: Readonly<Record<Wire, number>>) =>
			Object.fromEntries(wire.map((name) => [names[name], spreads[name]])) as Record<Names[Wire], number>,
		toWire: (input: string): Wire => wire.find((name) => names[name] === input)!,
	};
}
