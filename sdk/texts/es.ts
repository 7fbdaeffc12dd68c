import type { Further, Names, WarmUp } from "./codes.ts";
import type { AnswerTexts, Page, WidgetTexts } from "./dictionary.ts";

const page: Page = {
	title: "¿Cuándo está caliente el agua?",
	place: "Lugar",
	ownPlace: "Otro lugar",
	locate: "Usar mi ubicación",
	locating: "Buscando su ubicación…",
	noLocation: "El navegador no indica la ubicación. Introduzca los números a mano.",
	roughElevation: "Su dispositivo indica la altitud con un error que puede ser de 50 m o más. Compruébela.",
	noElevation:
		"Su dispositivo no indica la altitud. Introdúzcala: de ella dependen el sol y el punto de ebullición.",
	latitude: "Latitud (norte positivo)",
	longitude: "Longitud (este positivo)",
	elevationM: "Altitud sobre el nivel del mar",
	dish: "Disco",
	tank: "Depósito",
	month: "Día despejado de",
	need: "Agua caliente para",
	people: "Personas",
	litres: "Agua a {warm}",
	perPerson: "{litresL} a {warmC} por persona",
	units: "Unidades",
	metric: "Métricas",
	us: "EE. UU.",
	ask: "Calcular",
	empty: "Elija un lugar, un disco y un depósito. La respuesta aparece aquí en palabras y en un gráfico.",
	loading: "Calculando…",
	slow: "El cálculo continúa. La red o el servicio van lentos.",
	stale: "Ha hecho un cambio. Estas cifras corresponden a la elección anterior.",
	again: "Reintentar",
	fill: "Introduzca un número de {least} a {most}.",
	twoWays:
		"{typed} puede significar {whole} o {decimal}. Quite el separador de miles o escriba menos decimales.",
	fillFirst: "Faltan números o hay números fuera de los límites.",
	at: { one: "a la {time}", other: "a las {time}" },
	hot: "El agua está caliente {at} en un día despejado de {month}",
	notHot: "El agua no se calienta lo suficiente en un día despejado de {month}",
	ends: "El depósito termina el día a {endTemperatureC}. El agua se considera caliente a {targetTemperatureC}.",
	hotEnds: "A esa hora el depósito alcanza {targetTemperatureC}; termina el día a {endTemperatureC}.",
	showers: { one: "{count} ducha", many: "{count} de duchas", other: "{count} duchas" },
	gives: "El depósito suministra {usableL} a {warmC}: {showers} de {litresL}.",
	enough: "Es suficiente para los {neededL} que necesita.",
	short: "Faltan {missingL} para los {neededL} que necesita.",
	boils: "En este lugar el agua hierve a {boilingPointC}. Este depósito hierve {at}.",
	chart: "Sol y depósito a lo largo del día",
	chartSays:
		"La temperatura media del depósito pasa de {startC} {start} a {endC} {end}. El agua se considera caliente a {targetC}.",
	beam: "sol directo",
	mean: "depósito, media",
	top: "depósito, parte alta",
	targetLine: "caliente: {targetC}",
	boilLine: "ebullición: {boilC}",
	hotAt: "caliente {at}",
	cautions: "Advertencias de seguridad",
	danger: "Peligro",
	warning: "Advertencia",
	info: "Nota",
	assumed: {
		one: "Se supuso {count} valor",
		many: "Se supusieron {count} de valores",
		other: "Se supusieron {count} valores",
	},
	assumedHint: "El servicio completa lo que la lista del proveedor omite e indica el motivo.",
	disclaimer:
		"Es un cálculo para un día despejado, no una promesa. Deciden la normativa local y los profesionales habilitados.",
	airAssumed: "El servicio supuso aire de {lowC} a {highC}. Compárelo con el de {month} en su lugar.",
	airListed: "La lista del proveedor indica aire de {lowC} a {highC}.",
	faultyList: "La lista del proveedor no se puede usar",
	refused: "El servicio no puede responder a esta petición",
	barred: "Esta página no tiene permiso para usar el servicio. Avise a su responsable.",
	tooOften: "Demasiadas peticiones desde aquí. Vuelva a intentarlo en {waitMin}.",
	busy: "El servicio está ocupado. Vuelva a intentarlo en un momento.",
	failed: "El servicio ha fallado. No es culpa suya; vuelva a intentarlo más tarde.",
	offline: "No hay conexión con el servicio. Revise la red y vuelva a intentarlo.",
	timeout: "El servicio no respondió a tiempo. Vuelva a intentarlo.",
	quote: "Petición {id}",
};

const warmUp: WarmUp = {
	reasons: {
		limitedByBoiling:
			"En este lugar el agua hierve a {boilingPointC}, por debajo del objetivo de {targetTemperatureC}.",
		limitedByHighLimit: "El disco se aparta del sol cuando la parte alta del depósito alcanza {highLimitC}.",
		limitedByOilLimit: "El disco se aparta del sol cuando el fluido del circuito alcanza {oilLimitC}.",
		noSun: "El sol no sube lo suficiente para dar luz directa.",
		sunBelowDish:
			"El sol solo llega a {highestSunAltitudeDeg} de altura; este disco funciona a partir de {lowestSunAltitudeDeg}.",
		pumpNeverStarted:
			"El receptor nunca superó en {startDifferenceK} al depósito, por lo que la bomba no arrancó.",
		tooLittleHeat:
			"El calor del día lleva el depósito a {endTemperatureC}. Un disco mayor o un depósito menor da más temperatura.",
	},
	cautions: {
		loopFluidBoils:
			"{fluid}: alcanza {filmC} en el absorbedor y aquí hierve a {boilingPointC}. El vapor revienta un circuito cerrado. Aumente el caudal, use aceite o haga que un instalador habilitado lo presurice.",
		tankFreezes:
			"Con aire a {airC} se hielan primero respiradero y tubos; un respiradero obstruido revienta el depósito. Resguárdelo o caliente los tubos, según un fontanero habilitado.",
		receiverShade:
			"El receptor mide {outerDiameterM} de ancho y da sombra al {shade} del disco, no al {blocked}. El disco capta menos de lo calculado.",
		concentratedLight:
			"El foco ciega, quema la piel y provoca incendios al instante. Antes de trabajar, cubra o aparte el disco, use protección ocular homologada y aleje a las personas del haz.",
		flatCoilInFocus:
			"La luz incide en las espiras interiores, que carbonizan el fluido y se perforan. Use una cavidad o haga que un instalador habilitado saque el serpentín del foco.",
		scald:
			"El depósito contiene agua a {tankTemperatureC}, que quema. Instale una válvula mezcladora termostática a {tapTemperatureC} o al valor de la normativa local.",
		closedTank:
			"Un depósito cerrado puede reventar. Un fontanero habilitado debe instalar una válvula homologada de alivio de temperatura y presión ({reliefPressureKpa}), con descarga segura y sin llave previa.",
		openVent:
			"Un depósito abierto solo es seguro con el respiradero libre de hielo, cal y llaves, según exige la normativa local.",
		waterBoils:
			"El depósito hierve, aquí a {boilingPointC}. El vapor quema y expulsa agua. Baje el límite superior o capte menos sol.",
		waterNearBoiling:
			"El depósito termina a {topTemperatureC}, cerca de la ebullición a {boilingPointC}. Un profesional habilitado debe comprobar el límite superior.",
		fluidAboveBulkLimit:
			"{fluid}: alcanza {fluidTemperatureC}; su límite es de unos {limitC}. Se degrada y puede arder. Un instalador habilitado debe bajar el límite del aceite.",
		fluidAboveFilmLimit:
			"{fluid}: en la pared del receptor alcanza {filmTemperatureC}; su límite es de unos {limitC}. Se carboniza. Un instalador habilitado debe aumentar el caudal o bajar el límite del aceite.",
		fluidAboveFlashPoint:
			"{fluid}: punto de inflamación, unos {flashPointC}. Sin caudal, el receptor alcanza {stagnationTemperatureC}. El disco debe apartarse solo ante cualquier fallo. Tenga un extintor para aceite; siga la normativa contra incendios.",
		fluidBurns:
			"{fluid}: es combustible; punto de inflamación, unos {flashPointC}. Evite fugas hacia el aislamiento. Tenga un extintor para aceite; siga la normativa contra incendios.",
		pumpStops:
			"Si la bomba o la corriente se detienen a pleno sol, el receptor alcanza {stagnationTemperatureC}. El disco debe apartarse solo. Un profesional habilitado debe comprobarlo.",
		expansionTooSmall:
			"Los {contentL} del circuito se dilatan {neededL} al calentarse; el vaso admite {providedL}. El circuito reventaría. Un instalador habilitado debe calcular un vaso mayor.",
		expansion:
			"Los {contentL} del circuito se dilatan {neededL} al calentarse. Reserve {providedL} para ello, según exige la normativa local.",
		electricShock:
			"La bomba y los motores están en un lugar húmedo. Use muy baja tensión, o diferencial y toma de tierra, instalados por un electricista habilitado.",
		mayFreeze:
			"El aire ({airC}) se supuso, y una helada puede reventar el equipo ({place}). Consulte su noche más fría. Vacíelo o resguárdelo según un fontanero habilitado.",
		loopFreezes:
			"{fluid}: se congela a {limitC}, y el aire baja a {airC}. El hielo revienta el circuito. Vacíelo o use un fluido anticongelante, según un instalador habilitado.",
		loopStiffens:
			"{fluid}: deja de fluir a unos {limitC}, y el aire baja a {airC}. Elija un fluido menos viscoso o haga que un instalador habilitado añada cable calefactor.",
		legionella:
			"Parte del depósito termina a {coldestLayerC}. La legionela crece en agua tibia y muere a {safeTemperatureC}. Caliéntela toda a esa temperatura con la frecuencia que exige la normativa sanitaria.",
		singleWall:
			"{fluid}: una sola pared lo separa del agua, y una fuga no se ve. Use un serpentín de doble pared, o no beba ni cocine con esta agua.",
		laggingTooHot:
			"El aislamiento ({place}: {material}) puede alcanzar {hottestC}; su límite es de unos {limitC}. Elija otro cuya ficha técnica admita esa temperatura.",
		wetInsulation:
			"El aislamiento está mojado o sin cubierta contra la lluvia. Mojado pierde varias veces más calor. Cúbralo y selle las juntas.",
		plasticTooHot:
			"{material} ({place}): puede alcanzar {hottestC}; su límite es de unos {limitC}. Después se ablanda y revienta. Use metal, según un fontanero habilitado.",
		copperWithGalvanised:
			"El cobre y el acero galvanizado en la misma agua corroen el acero. Instale entre ellos un manguito dieléctrico homologado o use un solo metal.",
		galvanisedTooHot:
			"El acero galvanizado pierde su protección por encima de {limitC}; este depósito termina a {topTemperatureC}. Manténgalo más frío o elija otro.",
		windAndWeight:
			"Un disco de {mirrorAreaM2} actúa como vela, y {waterL} de agua pesan mucho. Un ingeniero de estructuras debe comprobar techo, mástil y anclajes; el disco debe resguardarse solo en tormentas.",
		fibreDust:
			"Al cortar este aislamiento ({material}) se desprenden fibras que dañan piel, ojos y pulmones. Use guantes, manga larga, gafas y mascarilla.",
		carcinogenicFibre:
			"Las fibras de este aislamiento ({material}) pueden causar cáncer. Elija otro; solo personal formado puede trabajar con él.",
		glass:
			"El vidrio del receptor puede estallar por el calor o la lluvia. Use vidrio templado, guantes y gafas, y un instalador cualificado.",
		starvedFlow:
			"{fluid}: en frío es espeso y frena la bomba durante {timeMin}. Consulte a un instalador habilitado.",
		heatTakenBack:
			"El circuito vuelve a extraer {takenBackKwh} del agua. Un electricista habilitado puede instalar un control que mida también el sol.",
		lowBoilingPoint:
			"A {elevationM} de altitud el agua hierve a {boilingPointC}. Ajuste a ello límites y válvulas.",
	},
};

const names: Names = {
	fluids: {
		water: "Agua",
		mineralOilVg22: "Aceite mineral ISO VG 22",
		mineralOilVg32: "Aceite mineral ISO VG 32",
		mineralOilVg46: "Aceite mineral ISO VG 46",
		mineralOilVg68: "Aceite mineral ISO VG 68",
		propyleneGlycol25: "Propilenglicol al 25 % en agua",
		propyleneGlycol40: "Propilenglicol al 40 % en agua",
		propyleneGlycol50: "Propilenglicol al 50 % en agua",
		vegetableOil: "Aceite vegetal",
	},
	insulations: {
		mineralWool: "coquilla de lana de roca",
		glassWool: "coquilla de lana de vidrio",
		elastomericFoam: "espuma elastomérica de nitrilo",
		solarElastomericFoam: "espuma elastomérica de EPDM",
		polyethyleneFoam: "espuma de polietileno",
		polyurethane: "espuma rígida de poliuretano",
		cellularGlass: "vidrio celular",
		calciumSilicate: "silicato de calcio",
		aerogelBlanket: "manta de aerogel",
		ceramicFibre: "manta de fibra cerámica",
		sheepWool: "lana de oveja",
	},
	plastics: {
		polyethylene: "polietileno de alta densidad",
	},
	parts: {
		tank: "depósito",
		coil: "serpentín",
		receiver: "receptor",
		loop: "circuito",
		supplyPipe: "tubo de ida",
		returnPipe: "tubo de retorno",
		furtherTube: "tubo adicional",
	},
};

const further: Further = {
	metals: {
		copper: "cobre",
		stainlessSteel: "acero inoxidable",
		steel: "acero",
		galvanisedSteel: "acero galvanizado",
		aluminium: "aleación de aluminio",
	},
	cautions: {
		closedLine:
			"El agua calentada entre un grifo cerrado y una válvula antirretorno revienta el tubo. Un fontanero habilitado debe instalar una válvula de alivio homologada, con descarga segura.",
		coarseReadings:
			"Todas las lecturas del depósito son múltiplos de {stepK}, pero la petición indica {givenK}. Algunas incertidumbres son demasiado pequeñas. Envíe el paso real del termómetro.",
		coilFreezes:
			"El aire baja a {airC} y el recipiente se enfría de noche. El hielo revienta el serpentín y sus tubos. Vacíelos o resguarde el recipiente, según un fontanero habilitado.",
		dishInWind:
			"Un disco de {apertureM2} actúa como una vela. Un ingeniero de estructuras debe comprobar techo, mástil y anclajes; el disco debe resguardarse solo en tormentas.",
		heatFromTheAir:
			"En el ajuste la instalación gana calor de un aire más frío. Revise la sombra del termómetro del aire, la orientación del sensor solar y otras fuentes de calor.",
		hotSurface:
			"La superficie ({place}) alcanza {surfaceTemperatureC}; por encima de {limitC} quema al tocarla. Añada aislamiento o una protección donde pase gente, según la normativa local de seguridad.",
		moreHeatThanSun:
			"El agua recibió más calor del que puede aportar el sol directo. Revise el volumen, la apertura, el sensor solar, las unidades y la posición del termómetro.",
		oneThermometer:
			"Un solo termómetro representa todo el depósito. Sin remover el agua, marca de más en la parte alta y de menos en la baja.",
		receiverFreezes:
			"El aire baja a {airC} y una noche despejada enfría más. El hielo revienta el receptor y sus tubos. Vacíelos cada noche con una válvula automática, según un fontanero habilitado.",
		sparseBeam:
			"Las lecturas del sol directo distan hasta {apartMin} y omiten nubes y mediodía. Los resultados que dependen de ellas son menos seguros de lo indicado.",
		standingWaterBoils:
			"Con grifo cerrado y pleno sol, el agua hierve a {boilingPointC}; el receptor alcanza {stagnationTemperatureC}. El disco debe apartarse solo. Un fontanero habilitado debe instalar una válvula de alivio.",
		starvedColdStart:
			"{fluid}: a {fluidTemperatureC} la bomba solo da el {shareOfFlow} de su caudal y el receptor se sobrecalienta. Mantenga el disco apartado del sol hasta que el fluido circule.",
		steamAtTap:
			"El agua llega al grifo a {tapTemperatureC} y aquí hierve a {openBoilingPointC}. El vapor quema al instante. Deje correr más agua; un fontanero habilitado debe instalar una válvula mezcladora.",
		steamInCoil:
			"Entre usos, el agua del serpentín llega a {oilTemperatureC} y hierve a {boilingPointC}. El vapor quema. Un fontanero habilitado debe instalar una válvula de alivio y otra mezcladora.",
		strayingRun:
			"Las lecturas se desvían unos {straysK} durante el ensayo, más allá del ruido. Las incertidumbres son mayores. Revise sensores, sombras y agua extraída.",
		tapRunsHot:
			"Un calentador instantáneo no tiene temperatura fija. Con menos caudal o más sol, el agua supera {wantedTemperatureC} y quema. Instale una válvula mezcladora a {tapTemperatureC} o según la normativa local.",
		waterDrawn:
			"Filas {rows}: el agua se enfrió hasta {fallK}, más rápido de lo que un depósito pierde calor. Se extrajo, añadió o removió agua. Envíe aparte las filas anteriores y posteriores.",
	},
	instantReasons: {
		limitedByBoiling:
			"En esta línea el agua hierve a {boilingPointC}, por debajo de los {wantedTemperatureC} deseados.",
		noSun: "No llega sol directo al lugar cuando se desea el agua.",
		sunBelowDish:
			"El sol está a {sunAltitudeDeg} de altura; este disco funciona a partir de {lowestSunAltitudeDeg}.",
		tooLittleHeat: "Con el mejor sol, {beamIrradianceWPerM2}, este disco solo calienta {flowLPerMin}.",
		lostInPipe:
			"Con el mejor sol, {beamIrradianceWPerM2}, el tubo de {lengthM} hasta el grifo pierde demasiado calor. Aíslelo o acórtelo.",
		weakSunForPart: "El sol basta para el {servedShare} de lo solicitado.",
		boilsInReceiver: "Con el mejor sol, un caudal menor de {leastFlowLPerMin} hierve en el receptor.",
		limitedByOilLimit:
			"Con el aceite en su límite de {oilLimitC}, el serpentín transmite poco calor, sea cual sea el disco. Un serpentín más largo transmite más.",
		noDishWithinBound: "Ningún disco de hasta {largestApertureM2} calienta ese caudal todo el tiempo.",
		chargeNotReached: "El aceite no pasa de {levelsOffC}; la carga requiere {chargeTemperatureC}.",
		coilTooSmall: "Incluso con el recipiente cargado, el serpentín solo calienta {coilFlowLPerMin}.",
	},
	problems: {
		"invalid-request": "La petición no cumple el contrato",
		"malformed-json": "El cuerpo no es JSON",
		"malformed-request": "La petición no es HTTP",
		unauthorized: "Se necesita una clave válida",
		forbidden: "La clave no permite esta operación",
		"not-found": "No hay nada en esta dirección",
		"method-not-allowed": "La dirección no admite este método",
		"not-acceptable": "La respuesta no está disponible en un formato aceptado",
		"request-timeout": "La petición tardó demasiado en llegar",
		"length-required": "La petición debe indicar la longitud de su cuerpo",
		"payload-too-large": "El cuerpo es demasiado grande",
		"unsupported-media-type": "El cuerpo debe ser JSON sin comprimir",
		"out-of-range": "Un valor está fuera del intervalo del modelo",
		contradictory: "La petición se contradice",
		impossible: "La petición es físicamente imposible",
		"too-large": "La petición exige demasiado cálculo",
		"no-convergence": "El cálculo no encontró solución",
		"too-many-requests": "Demasiadas peticiones",
		"headers-too-large": "Las cabeceras de la petición son demasiado grandes",
		abandoned: "El cliente cerró la conexión",
		internal: "El servicio ha fallado",
		overloaded: "El servicio está ocupado",
	},
	faults: {
		missing: "Falta {field}.",
		unknown: "{field} no es un campo conocido.",
		wrong_type: "{field} es de un tipo incorrecto.",
		out_of_bounds: "{field} está fuera de sus límites.",
		wrong_length: "{field} tiene una longitud incorrecta.",
		wrong_format: "{field} tiene un formato incorrecto.",
		not_a_choice: "{field} no es uno de los valores permitidos.",
		broken_rule: "{field} no es compatible con otro campo.",
		out_of_range: "{field} está fuera del intervalo del modelo.",
		contradictory: "{field} contradice otro campo.",
		impossible: "{field} es físicamente imposible.",
		too_large: "{field} exige demasiado cálculo.",
		no_convergence: "{field}: el cálculo no encontró solución.",
	},
	profiles: {
		"3XS": "Perfil de consumo 3XS",
		XXS: "Perfil de consumo XXS",
		XS: "Perfil de consumo XS",
		S: "Perfil de consumo S",
		M: "Perfil de consumo M",
		L: "Perfil de consumo L",
		XL: "Perfil de consumo XL",
		XXL: "Perfil de consumo XXL",
		"3XL": "Perfil de consumo 3XL",
		"4XL": "Perfil de consumo 4XL",
	},
	improvements: {
		aperture: "Un disco mayor de la misma forma, con el mismo receptor",
		reflectance: "Un espejo más reflectante",
		cleaning: "Un espejo lavado con más frecuencia",
		slopeError: "Un espejo de forma más precisa",
		receiverAperture: "Una abertura del receptor más cercana al mejor tamaño",
		selectiveCoating: "Un recubrimiento selectivo en el absorbedor",
		glazing: "Una cubierta de vidrio ante el serpentín abierto",
		supplyLagging: "Más aislamiento en el tubo de ida",
		returnLagging: "Más aislamiento en el tubo de retorno",
		pumpLagging: "Aislamiento alrededor de la bomba",
		tankLagging: "Más aislamiento en el depósito",
		dryLagging: "Cubierta contra la lluvia en todo el aislamiento exterior",
		flow: "Más caudal de la bomba",
		coilLength: "Un serpentín más largo en el depósito",
		shorterPipes: "Tubos más cortos entre el disco y el depósito",
	},
	notApplicable: {
		alreadySo: "La instalación ya lo tiene.",
		measuredWhole: "Disco y receptor se midieron juntos, por lo que sus partes se desconocen.",
		notOnThisReceiver: "Este tipo de receptor no admite el cambio.",
		noRoom: "No hay espacio para el cambio.",
		noSun: "Este día no hay sol con el que comparar.",
	},
	rankingAdvice: {
		rankByMinutes:
			"Un límite apartó el disco durante {turnedAwayTimeMin}, así que el depósito se llenó de calor en todo caso. Ordene por minutos o use un depósito mayor.",
	},
	runAdvice: {
		longerRun:
			"Prolongue el ensayo {addedMin} con un sol como el de la última hora, hasta que el agua esté a unos {endTemperatureC}.",
		hotterTank:
			"Prolongue el ensayo {addedMin} con un sol como el de la última hora, hasta que el agua esté a unos {endTemperatureC}.",
		closerRows: "Registre una fila cada {intervalMin}.",
		finerThermometer: "Use un termómetro cuyas lecturas varíen {readingNoiseK}.",
	},
	runNeeds: {
		beam: "Mida la irradiancia directa en un plano orientado al sol.",
		ambient: "Mida la temperatura del aire a la sombra.",
		dish: "Indique el tamaño del disco.",
		site: "Indique el lugar de la instalación.",
		oilInAndOut: "Mida el fluido a la entrada y a la salida del receptor.",
		rowsAtRest: "Continúe durante la noche, o pare la bomba una hora con agua caliente en el depósito.",
		rowsRunning: "Registre filas mientras el disco calienta el depósito.",
		moreRows: "Registre más filas: una por minuto, al menos siete.",
		longerRun: "Prolongue el ensayo, para que el agua supere mucho la temperatura del aire y el sol varíe.",
	},
};

export const widget: WidgetTexts = { page, warmUp, names };
export const answers: AnswerTexts = { warmUp, names, further };
