import type { Idle, ImprovementId } from "../../../src/index.ts";

/** Labels of two or three words, for the chart. */
export const SHORT: Readonly<Record<ImprovementId, string>> = {
	aperture: "larger dish",
	reflectance: "better mirror",
	cleaning: "cleaner mirror",
	slopeError: "more accurate mirror",
	receiverAperture: "receiver aperture",
	selectiveCoating: "selective coating",
	glazing: "pane over open coil",
	supplyLagging: "supply pipe insulation",
	returnLagging: "return pipe insulation",
	pumpLagging: "pump insulation",
	tankLagging: "tank insulation",
	dryLagging: "dry insulation",
	flow: "faster pump",
	coilLength: "longer coil",
	shorterPipes: "shorter pipes",
};

/** Sentences that describe each improvement. */
export const DESCRIPTIONS: Readonly<Record<ImprovementId, string>> = {
	aperture: "A larger dish of the same shape, with the same receiver.",
	reflectance: "A mirror that reflects more.",
	cleaning: "A mirror washed more often.",
	slopeError: "A mirror with a more accurate shape.",
	receiverAperture: "A receiver opening closer to the best compromise between spilled light and heat loss.",
	selectiveCoating: "A selective coating on the absorber.",
	glazing: "A glass pane in front of the open coil.",
	supplyLagging: "Thicker insulation on the supply pipe.",
	returnLagging: "Thicker insulation on the return pipe.",
	pumpLagging: "Insulation around the pump.",
	tankLagging: "Thicker insulation on the tank.",
	dryLagging: "All outdoor insulation kept dry.",
	flow: "A faster pump.",
	coilLength: "A longer coil in the tank.",
	shorterPipes: "Shorter pipes between dish and tank.",
};

/** Sentences for the reasons why an improvement does not apply. */
export const IDLE_REASONS: Readonly<Record<Idle, string>> = {
	alreadySo: "The plant is already as good as this step would make it.",
	measuredWhole: "Dish and receiver were measured together, so their separate properties are unknown.",
	notOnThisReceiver:
		"This kind of receiver does not take this improvement; a cavity retains its own warm air.",
	noRoom: "There is no room for this improvement.",
	noSun: "There is no sun on this day to size this improvement by.",
};
