import type { Hazards, Reasons } from "./codes.ts";

/** All that the widget says, in English. `{name}` stands for a value; the other languages hold the same names. */
export const en = {
	title: "When is the water hot?",
	place: "Place",
	ownPlace: "Another place",
	locate: "Use my location",
	locating: "Looking for your location…",
	noLocation: "Your browser did not give a location. Fill in the numbers by hand.",
	roughElevation: "The elevation came from your device and may be off by 50 m or more. Check it.",
	noElevation: "Your device knows no elevation. Fill it in: it decides sun and boiling point.",
	latitude: "Latitude, north positive",
	longitude: "Longitude, east positive",
	elevationM: "Elevation above sea",
	dish: "Dish",
	tank: "Tank",
	month: "Clear day in",
	need: "Hot water for",
	people: "People",
	litres: "Water at {warm}",
	perPerson: "{litresL} at {warmC} for each person",
	units: "Units",
	metric: "Metric",
	us: "US",
	ask: "Work it out",
	empty: "Choose a place, a dish and a tank. The answer comes in words first, then as a chart.",
	loading: "Working it out…",
	slow: "Still working on it. The line or the service is slow.",
	stale: "You changed something. These figures belong to the earlier choice.",
	again: "Try again",
	fill: "Fill in a number from {least} to {most}.",
	twoWays:
		"{typed} can mean {whole} or {decimal}. Leave out the thousands separator, or write fewer decimals.",
	fillFirst: "Some numbers are missing or out of range.",
	hot: "Hot at {time} on a clear {month} day",
	notHot: "Not hot enough on a clear {month} day",
	ends: "The tank stands at {endTemperatureC} in the evening; hot means {targetTemperatureC}.",
	hotEnds: "It reaches {targetTemperatureC} then, and stands at {endTemperatureC} in the evening.",
	showers: { one: "{count} shower", other: "{count} showers" },
	gives: "It gives {usableL} at {warmC}: {showers} of {litresL} each.",
	enough: "That is enough for the {neededL} you need.",
	short: "That is {missingL} short of the {neededL} you need.",
	boils: "The water boils at {boilingPointC} here, and this tank reaches that at {time}.",
	chart: "Sun and tank through the day",
	chartSays: "The tank goes from {startC} at {start} to {endC} at {end}. Hot means {targetC}.",
	beam: "sun's beam",
	mean: "tank, mean",
	top: "tank, top",
	targetLine: "hot: {targetC}",
	boilLine: "boils: {boilC}",
	hotAt: "hot at {time}",
	cautions: "What to be careful of",
	danger: "Danger",
	warning: "Warning",
	info: "Note",
	assumed: { one: "{count} value was assumed", other: "{count} values were assumed" },
	assumedHint: "What the list does not say, the service fills in, and gives its reason.",
	disclaimer:
		"A calculation for a clear day, not a promise. Local codes and licensed people have the last word.",
	airAssumed: "The service assumed air from {lowC} to {highC}: compare it with {month} where you are.",
	airListed: "The air goes from {lowC} to {highC}, as the supplier's list says.",
	faultyList: "The supplier's list can't be used",
	refused: "The service can't answer this",
	barred: "This page may not use the service. Tell its owner.",
	tooOften: "Too many questions from here. Try again in {waitMin}.",
	busy: "The service is busy. Try again in a moment.",
	failed: "The service failed. It is not your doing; try again later.",
	offline: "No connection to the service. Check the network and try again.",
	timeout: "No answer came in time. Try again.",
	quote: "Request {id}",
	reasons: {
		limitedByBoiling: "Water boils at {boilingPointC} here, below the {targetTemperatureC} asked.",
		limitedByHighLimit: "The dish turns away when the top of the tank is at {highLimitC}.",
		limitedByOilLimit: "The dish turns away when the oil is at {oilLimitC}.",
		noSun: "The sun does not rise high enough to send any beam.",
		sunBelowDish:
			"The sun stays below {lowestSunAltitudeDeg}, where this dish starts; it climbs to {highestSunAltitudeDeg}.",
		pumpNeverStarted:
			"The receiver never got {startDifferenceK} hotter than the tank, so the pump stayed off.",
		tooLittleHeat:
			"The day's heat brings the tank to {endTemperatureC}. A larger dish or a smaller tank gets further.",
	} satisfies Reasons,
	hazards: {
		loopFluidBoils:
			"{fluid} gets to {filmC} at the absorber and boils at {boilingPointC} here. Steam bursts a closed loop: raise the flow, use oil, or have a licensed fitter pressurise it.",
		tankFreezes:
			"The tank stands in air of {airC}. Vent and pipes freeze first, and a blocked vent bursts it: house it or trace-heat them, as a licensed plumber advises.",
		receiverShade:
			"The receiver, {outerDiameterM} wide, shades {shade} of the dish, not {blocked}: the answer is too bright.",
		concentratedLight:
			"The focus blinds, burns skin and lights fires at once. Cover the dish or turn it away before any work, wear rated eye protection and keep people out of the beam.",
		flatCoilInFocus:
			"The light falls on the inner turns: they char the fluid and burn through. Use a cavity, or have a licensed fitter move the coil out of focus.",
		scald:
			"The tank holds water at {tankTemperatureC}, which scalds. Fit a thermostatic mixing valve: {tapTemperatureC} at the tap, or as your local code says.",
		closedTank:
			"A closed tank can burst. It needs a listed temperature and pressure relief valve ({reliefPressureKpa}) with a safe outlet and no valve between, fitted by a licensed plumber.",
		openVent:
			"A vented tank is safe while its vent is free of ice, scale and valves, as your local code asks.",
		waterBoils:
			"The tank boils, at {boilingPointC} here. Steam scalds and drives water out. Set the high limit lower or take less sun.",
		waterNearBoiling:
			"The tank ends at {topTemperatureC}, close to its boil at {boilingPointC}. Have the high limit tested by a licensed person.",
		fluidAboveBulkLimit:
			"{fluid} gets to {fluidTemperatureC}; it bears about {limitC}. It breaks down and can catch fire: have a licensed fitter lower the oil limit.",
		fluidAboveFilmLimit:
			"At the receiver's wall {fluid} gets to {filmTemperatureC}; it bears about {limitC} there. It chars: have a licensed fitter raise the flow or lower the limit.",
		fluidAboveFlashPoint:
			"{fluid} flashes at about {flashPointC}; without flow in full sun the receiver gets to {stagnationTemperatureC}. The dish must turn away by itself on any fault. Keep an oil fire extinguisher and follow the fire code.",
		fluidBurns:
			"{fluid} burns; its flash point is about {flashPointC}. Keep leaks out of the lagging, keep an oil fire extinguisher and follow the fire code.",
		pumpStops:
			"If the pump or the power stops in full sun, the receiver gets to {stagnationTemperatureC}. The dish must turn away by itself; have a licensed person prove it.",
		expansionTooSmall:
			"The loop's {contentL} swell by {neededL} when hot, with room for {providedL}: it would burst. Fit a larger vessel, sized by a licensed fitter.",
		expansion:
			"The loop's {contentL} swell by {neededL} when hot. Keep {providedL} of room for that, to your local code.",
		electricShock:
			"Pump and drives stand in the wet. Use extra-low voltage, or a residual-current device and an earth, wired by a licensed electrician.",
		mayFreeze:
			"The air ({airC}) was assumed; frost bursts the {place}. Look up your coldest night; drain or house it as a licensed plumber advises.",
		loopFreezes:
			"{fluid} freezes at {limitC}, and the air falls to {airC}. Ice bursts the loop: drain it or use a fluid that bears the frost, as a licensed fitter advises.",
		loopStiffens:
			"{fluid} stops flowing at about {limitC}, and the air falls to {airC}. Choose a thinner fluid, or have a licensed fitter add trace heating.",
		legionella:
			"Part of the tank ends at {coldestLayerC}. Legionella grows between 25 and 45 °C and dies at {safeTemperatureC}: bring all the water there as often as your health code asks.",
		singleWall:
			"One wall parts {fluid} from the water, and a leak goes unseen. Use a double-walled coil, or keep this water from drinking and cooking.",
		laggingTooHot:
			"Lagging at the {place} ({material}) can meet {hottestC}; it bears about {limitC}. Choose one whose data sheet covers that.",
		wetInsulation:
			"The lagging is wet or has no rain cover. Wet, it loses several times the heat: jacket it and seal the seams.",
		plasticTooHot:
			"{place} ({material}): it can meet {hottestC}, bears about {limitC}, then softens and bursts. Use metal, as a licensed plumber advises.",
		copperWithGalvanised:
			"Copper and galvanised steel in the same water corrode the steel. Put a listed dielectric fitting between them, or use one metal.",
		galvanisedTooHot:
			"Galvanised steel loses its protection above {limitC}; this tank ends at {topTemperatureC}. Hold it below, or choose another tank.",
		windAndWeight:
			"A dish of {mirrorAreaM2} is a sail, and {waterL} of water are heavy. A structural engineer must prove roof, mast and anchors; the dish must stow itself in a storm.",
		fibreDust:
			"Cutting {material} frees fibres that hurt skin, eyes and lungs. Wear gloves, long sleeves, goggles and a dust mask.",
		carcinogenicFibre:
			"Fibres of {material} may cause cancer. Choose another lagging; only trained people may work it.",
		glass:
			"The receiver's pane can shatter from heat or rain. Use toughened glass, gloves and goggles, and a qualified fitter.",
		starvedFlow: "For {timeMin} cold, thick {fluid} slows the pump. Ask a licensed fitter.",
		heatTakenBack:
			"The loop takes {takenBackKwh} kWh back out of the water. A licensed electrician can fit a controller that heeds the sun.",
		lowBoilingPoint: "At {elevationM} water boils at {boilingPointC}. Set limits and valves for that.",
	} satisfies Hazards,
	names: {} as Readonly<Record<string, string>>, // what the service names in English, in other languages
};
