/** Codes of all cautions, by subject. The
 *  contract lists them, and each language of the widget has a sentence for those of a warm-up. */
export const CAUTION_CODES = [
	// light
	"concentratedLight",
	"flatCoilInFocus",
	"pumpStops",
	"receiverShade",
	// hot fluid
	"fluidAboveBulkLimit",
	"fluidAboveFilmLimit",
	"fluidAboveFlashPoint",
	"fluidBurns",
	"singleWall",
	// stored water
	"closedTank",
	"openVent",
	"waterBoils",
	"waterNearBoiling",
	"lowBoilingPoint",
	"legionella",
	"tankFreezes",
	"mayFreeze",
	// tap
	"scald",
	"tapRunsHot",
	"steamAtTap",
	// water in the focus, or in a coil in hot oil
	"closedLine",
	"standingWaterBoils",
	"steamInCoil",
	"receiverFreezes",
	"coilFreezes",
	// loop
	"electricShock",
	"expansion",
	"expansionTooSmall",
	"heatTakenBack",
	"loopFluidBoils",
	"loopFreezes",
	"loopStiffens",
	"starvedColdStart",
	"starvedFlow",
	// materials
	"carcinogenicFibre",
	"copperWithGalvanised",
	"fibreDust",
	"galvanisedTooHot",
	"glass",
	"hotSurface",
	"laggingTooHot",
	"plasticTooHot",
	"wetInsulation",
	// structure
	"dishInWind",
	"windAndWeight",
	// readings of a test run
	"coarseReadings",
	"heatFromTheAir",
	"moreHeatThanSun",
	"oneThermometer",
	"sparseBeam",
	"strayingRun",
	"waterDrawn",
] as const;

export type CautionCode = (typeof CAUTION_CODES)[number];
