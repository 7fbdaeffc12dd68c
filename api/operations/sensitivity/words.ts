import type { Idle, ImprovementId } from "../../../src/index.ts";

/** Each in two or three words, for a drawing. */
export const SHORT: Readonly<Record<ImprovementId, string>> = {
	aperture: "larger dish",
	reflectance: "better mirror",
	cleaning: "cleaner mirror",
	slopeError: "truer mirror",
	receiverAperture: "better opening",
	selectiveCoating: "selective coating",
	glazing: "pane before spiral",
	supplyLagging: "hot pipe lagged",
	returnLagging: "return pipe lagged",
	pumpLagging: "pump lagged",
	tankLagging: "tank lagged",
	dryLagging: "lagging kept dry",
	flow: "faster pump",
	coilLength: "longer coil",
	shorterPipes: "shorter pipes",
};

/** What is done. */
export const DONE: Readonly<Record<ImprovementId, string>> = {
	aperture: "A larger dish of the same shape, the receiver left as it is.",
	reflectance: "A mirror that reflects more.",
	cleaning: "A mirror washed more often.",
	slopeError: "A mirror truer to its shape.",
	receiverAperture: "A receiver opening nearer to the best trade between light spilled and heat lost.",
	selectiveCoating: "A selective coating on the absorber.",
	glazing: "A pane before the bare spiral.",
	supplyLagging: "Thicker lagging on the hot pipe.",
	returnLagging: "Thicker lagging on the return pipe.",
	pumpLagging: "Lagging around the pump.",
	tankLagging: "Thicker lagging on the tank.",
	dryLagging: "All lagging out of doors kept dry.",
	flow: "A faster pump.",
	coilLength: "A longer coil in the tank.",
	shorterPipes: "Shorter pipes between dish and tank.",
};

export const WHY_NOT: Readonly<Record<Idle, string>> = {
	alreadySo: "The plant is as good as this step already.",
	measuredWhole: "Dish and receiver were measured together, so their parts are not known.",
	notOnThisReceiver: "This kind of receiver takes no such change: a cavity keeps its own warm air in.",
	noRoom: "There is no room for it.",
	noSun: "There is no sun on this day to choose by.",
};
