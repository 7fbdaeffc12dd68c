import type { Further, Names, WarmUp } from "./codes.ts";
import type { AnswerTexts, Page, WidgetTexts } from "./dictionary.ts";

const page: Page = {
	title: "When is the water hot?",
	place: "Place",
	ownPlace: "Another place",
	locate: "Use my location",
	locating: "Finding your location…",
	noLocation: "Your browser did not report a location. Enter the numbers yourself.",
	roughElevation: "Your device reported the elevation, which may be wrong by 50 m or more. Check it.",
	noElevation:
		"Your device does not report its elevation. Enter it: sunlight and boiling point depend on it.",
	latitude: "Latitude (north is positive)",
	longitude: "Longitude (east is positive)",
	elevationM: "Elevation above sea level",
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
	ask: "Calculate",
	empty: "Choose a place, a dish and a tank. The answer appears here in words and as a chart.",
	loading: "Calculating…",
	slow: "Still calculating. The network or the service is slow.",
	stale: "You made a change. These figures belong to the earlier choice.",
	again: "Try again",
	fill: "Enter a number from {least} to {most}.",
	twoWays: "{typed} can mean {whole} or {decimal}. Remove the thousands separator or enter fewer decimals.",
	fillFirst: "Some numbers are missing or out of range.",
	at: { other: "at {time}" },
	hot: "The water is hot {at} on a clear {month} day",
	notHot: "The water does not get hot enough on a clear {month} day",
	ends: "The tank ends the day at {endTemperatureC}. Hot means {targetTemperatureC}.",
	hotEnds: "The tank reaches {targetTemperatureC} at that time and ends the day at {endTemperatureC}.",
	showers: { one: "{count} shower", other: "{count} showers" },
	gives: "The tank supplies {usableL} at {warmC}: {showers} of {litresL} each.",
	enough: "That is enough for the {neededL} you need.",
	short: "That is {missingL} less than the {neededL} you need.",
	boils: "Water boils at {boilingPointC} here. This tank boils {at}.",
	chart: "Sun and tank through the day",
	chartSays: "The tank's mean goes from {startC} {start} to {endC} {end}. Hot means {targetC}.",
	beam: "direct sunlight",
	mean: "tank, mean",
	top: "tank, top",
	targetLine: "hot: {targetC}",
	boilLine: "boiling: {boilC}",
	hotAt: "hot {at}",
	cautions: "Safety notes",
	danger: "Danger",
	warning: "Warning",
	info: "Note",
	assumed: { one: "{count} value was assumed", other: "{count} values were assumed" },
	assumedHint: "The service fills in what the supplier's list omits, and states its reason.",
	disclaimer:
		"This is a calculation for a clear day, not a promise. Local codes and licensed professionals decide.",
	airAssumed: "The service assumed air from {lowC} to {highC}. Compare that with {month} at your place.",
	airListed: "The supplier's list states air from {lowC} to {highC}.",
	faultyList: "The supplier's list cannot be used",
	refused: "The service cannot answer this request",
	barred: "This page is not allowed to use the service. Inform the owner of the page.",
	tooOften: "Too many requests from here. Try again in {waitMin}.",
	busy: "The service is busy. Try again in a moment.",
	failed: "The service failed. This is not your fault; try again later.",
	offline: "No connection to the service. Check the network and try again.",
	timeout: "The service did not answer in time. Try again.",
	quote: "Request {id}",
};

const warmUp: WarmUp = {
	reasons: {
		limitedByBoiling: "Water boils at {boilingPointC} here, below the target of {targetTemperatureC}.",
		limitedByHighLimit: "The dish turns away from the sun when the top of the tank reaches {highLimitC}.",
		limitedByOilLimit: "The dish turns away from the sun when the fluid in the loop reaches {oilLimitC}.",
		noSun: "The sun does not rise high enough to send direct light.",
		sunBelowDish:
			"The sun climbs to only {highestSunAltitudeDeg}; this dish starts at {lowestSunAltitudeDeg}.",
		pumpNeverStarted:
			"The receiver was never {startDifferenceK} hotter than the tank, so the pump did not start.",
		tooLittleHeat:
			"The day's heat brings the tank to {endTemperatureC}. A larger dish or a smaller tank gets hotter.",
	},
	cautions: {
		loopFluidBoils:
			"{fluid}: it reaches {filmC} at the absorber and boils at {boilingPointC} here. Steam bursts a closed loop. Raise the flow, use oil, or have a licensed fitter pressurise it.",
		tankFreezes:
			"Air of {airC} freezes vent and pipes first, and a blocked vent bursts the tank. Shelter the tank or trace-heat the pipes, as a licensed plumber advises.",
		receiverShade:
			"The receiver is {outerDiameterM} wide and shades {shade} of the dish, not {blocked}. The dish collects less than calculated.",
		concentratedLight:
			"The focus blinds, burns skin and starts fires instantly. Before work, cover the dish or turn it away, wear rated eye protection and keep people out of the beam.",
		flatCoilInFocus:
			"The light falls on the inner turns, which char the fluid and burn through. Use a cavity, or have a licensed fitter move the coil out of focus.",
		scald:
			"The tank holds water at {tankTemperatureC}, which scalds. Fit a thermostatic mixing valve set to {tapTemperatureC}, or to the value in your local code.",
		closedTank:
			"A closed tank can burst. A licensed plumber must fit a listed temperature and pressure relief valve ({reliefPressureKpa}), with a safe outlet and no shut-off valve before it.",
		openVent:
			"A vented tank is safe only while its vent is free of ice, scale and valves, as your local code requires.",
		waterBoils:
			"The tank boils, here at {boilingPointC}. Steam scalds and drives water out. Lower the high limit or take in less sun.",
		waterNearBoiling:
			"The tank ends at {topTemperatureC}, close to boiling at {boilingPointC}. Have a licensed person test the high limit.",
		fluidAboveBulkLimit:
			"{fluid}: it reaches {fluidTemperatureC}; its limit is about {limitC}. It breaks down and can catch fire. Have a licensed fitter lower the oil limit.",
		fluidAboveFilmLimit:
			"{fluid}: at the receiver's wall it reaches {filmTemperatureC}; its limit is about {limitC}. It chars. Have a licensed fitter raise the flow or lower the oil limit.",
		fluidAboveFlashPoint:
			"{fluid}: flash point about {flashPointC}. Without flow the receiver reaches {stagnationTemperatureC}. On any fault the dish must turn away by itself. Keep an oil-fire extinguisher; follow the fire code.",
		fluidBurns:
			"{fluid}: it burns; flash point about {flashPointC}. Keep leaks out of the insulation. Keep an oil-fire extinguisher; follow the fire code.",
		pumpStops:
			"If the pump or the power stops in full sun, the receiver reaches {stagnationTemperatureC}. The dish must turn away by itself. Have a licensed person prove it.",
		expansionTooSmall:
			"The loop's {contentL} expand by {neededL} when hot; the vessel has room for {providedL}. The loop would burst. Have a licensed fitter size a larger vessel.",
		expansion:
			"The loop's {contentL} expand by {neededL} when hot. Keep {providedL} of room for that, as your local code requires.",
		electricShock:
			"The pump and the drives are in a wet place. Use extra-low voltage, or a residual-current device and an earth, wired by a licensed electrician.",
		mayFreeze:
			"The air ({airC}) was assumed, and frost bursts the {place}. Look up your coldest night. Drain or shelter it as a licensed plumber advises.",
		loopFreezes:
			"{fluid}: it freezes at {limitC}, and the air falls to {airC}. Ice bursts the loop. Drain it or use a frost-proof fluid, as a licensed fitter advises.",
		loopStiffens:
			"{fluid}: it stops flowing at about {limitC}, and the air falls to {airC}. Choose a thinner fluid, or have a licensed fitter add trace heating.",
		legionella:
			"Part of the tank ends at {coldestLayerC}. Legionella grows in lukewarm water and dies at {safeTemperatureC}. Heat all the water to that as often as your health code requires.",
		singleWall:
			"{fluid}: a single wall separates it from the water, and a leak stays unseen. Use a double-walled coil, or do not drink or cook with this water.",
		laggingTooHot:
			"Insulation at the {place} ({material}) can reach {hottestC}; its limit is about {limitC}. Choose one whose data sheet covers that.",
		wetInsulation:
			"The insulation is wet or has no rain cover. Wet insulation loses several times more heat. Cover it and seal the seams.",
		plasticTooHot:
			"The {place} ({material}) can reach {hottestC}; its limit is about {limitC}. It then softens and bursts. Use metal, as a licensed plumber advises.",
		copperWithGalvanised:
			"Copper and galvanised steel in the same water corrode the steel. Fit a listed dielectric connector between them, or use one metal.",
		galvanisedTooHot:
			"Galvanised steel loses its protection above {limitC}; this tank ends at {topTemperatureC}. Keep it cooler, or choose another tank.",
		windAndWeight:
			"A dish of {mirrorAreaM2} acts as a sail, and {waterL} of water is heavy. A structural engineer must check roof, mast and anchors; the dish must stow itself in storms.",
		fibreDust:
			"Cutting {material} releases fibres that harm skin, eyes and lungs. Wear gloves, long sleeves, goggles and a dust mask.",
		carcinogenicFibre:
			"Fibres of {material} may cause cancer. Choose another insulation; only trained people may work with it.",
		glass:
			"The receiver's glass can shatter from heat or rain. Use toughened glass, gloves and goggles, and a qualified fitter.",
		starvedFlow: "{fluid}: while cold it is thick and slows the pump for {timeMin}. Ask a licensed fitter.",
		heatTakenBack:
			"The loop takes {takenBackKwh} back out of the water. A licensed electrician can fit a controller that also senses the sun.",
		lowBoilingPoint: "At {elevationM} water boils at {boilingPointC}. Set limits and valves for that.",
	},
};

/** As the service sends them: a parameter is looked up here before it is translated. */
const names: Names = {
	fluids: {
		water: "Water",
		mineralOilVg22: "Mineral oil ISO VG 22",
		mineralOilVg32: "Mineral oil ISO VG 32",
		mineralOilVg46: "Mineral oil ISO VG 46",
		mineralOilVg68: "Mineral oil ISO VG 68",
		propyleneGlycol25: "Propylene glycol 25 % by volume in water",
		propyleneGlycol40: "Propylene glycol 40 % by volume in water",
		propyleneGlycol50: "Propylene glycol 50 % by volume in water",
		vegetableOil: "Vegetable oil",
	},
	insulations: {
		mineralWool: "rock wool pipe section",
		glassWool: "glass wool pipe section",
		elastomericFoam: "elastomeric foam, nitrile rubber",
		solarElastomericFoam: "elastomeric foam, heat-resistant EPDM rubber",
		polyethyleneFoam: "polyethylene foam",
		polyurethane: "rigid polyurethane or polyisocyanurate foam",
		cellularGlass: "cellular glass",
		calciumSilicate: "calcium silicate",
		aerogelBlanket: "silica aerogel blanket",
		ceramicFibre: "refractory ceramic fibre blanket",
		sheepWool: "sheep's wool",
	},
	plastics: {
		polyethylene: "high-density polyethylene",
	},
	parts: {
		tank: "tank",
		coil: "coil",
		receiver: "receiver",
		loop: "loop",
		supplyPipe: "supply pipe",
		returnPipe: "return pipe",
		furtherTube: "further tube",
	},
};

const further: Further = {
	metals: {
		copper: "copper",
		stainlessSteel: "austenitic stainless steel",
		steel: "steel",
		galvanisedSteel: "galvanised steel",
		aluminium: "aluminium alloy",
	},
	cautions: {
		closedLine:
			"Water heated between a closed tap and a check valve bursts its pipe. A licensed plumber must fit a listed relief valve on the heated side, with a safe outlet.",
		coarseReadings:
			"All readings of the tank are multiples of {stepK}, but the request states {givenK}. Some uncertainties are too narrow. Send the thermometer's true step.",
		coilFreezes:
			"The air falls to {airC}, and the vessel cools at night. Ice bursts the coil and its pipes. Drain them or shelter the vessel, as a licensed plumber advises.",
		dishInWind:
			"A dish of {apertureM2} acts as a sail. A structural engineer must check roof, mast and anchors; the dish must stow itself in storms.",
		heatFromTheAir:
			"In the fit the plant gains heat from colder air. Check the shade of the air thermometer, the aim of the beam sensor and other sources of heat.",
		hotSurface:
			"The surface of the {place} reaches {surfaceTemperatureC}; above {limitC} a touch burns. Add insulation or a guard where people pass, as your local safety code requires.",
		moreHeatThanSun:
			"The water took up more heat than the beam can bring. Check tank volume, aperture, beam sensor, units and the place of the thermometer.",
		oneThermometer:
			"One thermometer represents the whole tank. In a tank that was not stirred, it reads too high at the top and too low at the bottom.",
		receiverFreezes:
			"The air falls to {airC}, and a clear night is colder. Ice bursts the receiver and its pipes. Drain them nightly by an automatic valve, as a licensed plumber advises.",
		sparseBeam:
			"Readings of the beam are up to {apartMin} apart and miss clouds and noon. Results that rest on the beam are less certain than stated.",
		standingWaterBoils:
			"With a closed tap in full sun, water boils at {boilingPointC}; the receiver reaches {stagnationTemperatureC}. The dish must turn away by itself. A licensed plumber must fit a relief valve.",
		starvedColdStart:
			"{fluid}: at {fluidTemperatureC} the pump delivers only {shareOfFlow} of its set flow, and the receiver overheats. Keep the dish off the sun until the fluid flows.",
		steamAtTap:
			"Water comes to the tap at {tapTemperatureC} and boils at {openBoilingPointC} here. Steam scalds at once. Run more water, and have a licensed plumber fit a mixing valve.",
		steamInCoil:
			"Between draws the water in the coil heats to {oilTemperatureC} and boils at {boilingPointC}. Steam scalds. Have a licensed plumber fit a relief valve and a mixing valve.",
		strayingRun:
			"The readings drift by about {straysK} over the run, beyond random scatter. The uncertainties are wider. Check sensors, shadows and water drawn.",
		tapRunsHot:
			"An instant heater has no set temperature. Less flow or more sun makes water far hotter than {wantedTemperatureC}; it scalds. Fit a mixing valve at {tapTemperatureC}, or per local code.",
		waterDrawn:
			"Rows {rows}: the water cooled by up to {fallK}, faster than a tank loses heat. Water was drawn, added or stirred. Send the rows before and after separately.",
	},
	instantReasons: {
		limitedByBoiling: "Water boils at {boilingPointC} in this line, below the wanted {wantedTemperatureC}.",
		noSun: "No direct sunlight reaches the place when the water is wanted.",
		sunBelowDish: "The sun is {sunAltitudeDeg} high; this dish starts at {lowestSunAltitudeDeg}.",
		tooLittleHeat: "Under the best sun, {beamIrradianceWPerM2}, this dish heats only {flowLPerMin}.",
		lostInPipe:
			"Under the best sun, {beamIrradianceWPerM2}, the pipe of {lengthM} to the tap loses too much heat. Insulate or shorten it.",
		weakSunForPart: "The sun is strong enough for {servedShare} of the request.",
		boilsInReceiver: "Under the best sun, a flow below {leastFlowLPerMin} boils in the receiver.",
		limitedByOilLimit:
			"With the oil at its limit of {oilLimitC}, the coil passes too little heat, whatever the dish. A longer coil passes more.",
		noDishWithinBound: "No dish up to {largestApertureM2} heats that flow throughout.",
		chargeNotReached: "The oil gets no hotter than {levelsOffC}; the charge needs {chargeTemperatureC}.",
		coilTooSmall: "Even from a charged vessel, the coil heats only {coilFlowLPerMin}.",
	},
	problems: {
		"invalid-request": "The request breaks the contract",
		"malformed-json": "The body is not JSON",
		"malformed-request": "The request is not HTTP",
		unauthorized: "A valid key is needed",
		forbidden: "The key does not allow this",
		"not-found": "There is nothing at this address",
		"method-not-allowed": "The address does not support this method",
		"not-acceptable": "The answer is not available in an accepted format",
		"request-timeout": "The request took too long to arrive",
		"length-required": "The request must state the length of its body",
		"payload-too-large": "The body is too large",
		"unsupported-media-type": "The body must be plain JSON",
		"out-of-range": "A value is outside the range of the model",
		contradictory: "The request contradicts itself",
		impossible: "The request is physically impossible",
		"too-large": "The request asks for too much work",
		"no-convergence": "The calculation found no solution",
		"too-many-requests": "Too many requests",
		"headers-too-large": "The headers of the request are too large",
		abandoned: "The client closed the connection",
		internal: "The service failed",
		overloaded: "The service is busy",
	},
	faults: {
		missing: "{field} is required.",
		unknown: "{field} is not a known field.",
		wrong_type: "{field} has the wrong type.",
		out_of_bounds: "{field} is outside its limits.",
		wrong_length: "{field} has the wrong length.",
		wrong_format: "{field} has the wrong format.",
		not_a_choice: "{field} is not one of the allowed values.",
		broken_rule: "{field} conflicts with another field.",
		out_of_range: "{field} is outside the range of the model.",
		contradictory: "{field} contradicts another field.",
		impossible: "{field} is physically impossible.",
		too_large: "{field} asks for too much work.",
		no_convergence: "{field}: the calculation found no solution.",
	},
	profiles: {
		"3XS": "Tapping profile 3XS",
		XXS: "Tapping profile XXS",
		XS: "Tapping profile XS",
		S: "Tapping profile S",
		M: "Tapping profile M",
		L: "Tapping profile L",
		XL: "Tapping profile XL",
		XXL: "Tapping profile XXL",
		"3XL": "Tapping profile 3XL",
		"4XL": "Tapping profile 4XL",
	},
	improvements: {
		aperture: "A larger dish of the same shape, with the same receiver",
		reflectance: "A mirror that reflects more",
		cleaning: "A mirror that is washed more often",
		slopeError: "A mirror of more accurate shape",
		receiverAperture: "A receiver opening closer to the best size",
		selectiveCoating: "A selective coating on the absorber",
		glazing: "A glass cover in front of the open coil",
		supplyLagging: "Thicker insulation on the supply pipe",
		returnLagging: "Thicker insulation on the return pipe",
		pumpLagging: "Insulation around the pump",
		tankLagging: "Thicker insulation on the tank",
		dryLagging: "A rain cover on all outdoor insulation",
		flow: "A higher pump flow",
		coilLength: "A longer coil in the tank",
		shorterPipes: "Shorter pipes between dish and tank",
	},
	notApplicable: {
		alreadySo: "The plant already has this.",
		measuredWhole: "Dish and receiver were measured together, so their parts are unknown.",
		notOnThisReceiver: "This kind of receiver does not allow the change.",
		noRoom: "There is no room for the change.",
		noSun: "There is no sun on this day to compare by.",
	},
	rankingAdvice: {
		rankByMinutes:
			"A limit turned the dish away for {turnedAwayTimeMin}, so the tank was full in any case. Rank by minutes, or use a larger tank.",
	},
	runAdvice: {
		longerRun:
			"Run {addedMin} longer in sun as in the last hour, until the water is at about {endTemperatureC}.",
		hotterTank:
			"Run {addedMin} longer in sun as in the last hour, until the water is at about {endTemperatureC}.",
		closerRows: "Record a row every {intervalMin}.",
		finerThermometer: "Use a thermometer whose readings scatter by {readingNoiseK}.",
	},
	runNeeds: {
		beam: "Measure the beam irradiance on a plane that faces the sun.",
		ambient: "Measure the air temperature in the shade.",
		dish: "State the size of the dish.",
		site: "State the place of the plant.",
		oilInAndOut: "Measure the fluid at the receiver's inlet and outlet.",
		rowsAtRest: "Continue through the night, or stop the pump for an hour with hot water in the tank.",
		rowsRunning: "Record rows while the dish heats the tank.",
		moreRows: "Record more rows: one a minute, at least seven.",
		longerRun: "Run longer, so that the water gets much hotter than the air, and in changing sun.",
	},
};

export const widget: WidgetTexts = { page, warmUp, names };
export const answers: AnswerTexts = { warmUp, names, further };
