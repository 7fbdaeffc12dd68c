import type { Texts } from "./words.ts";

export const es: Texts = {
	title: "¿Cuándo está caliente el agua?",
	place: "Lugar",
	ownPlace: "Otro lugar",
	locate: "Usar mi ubicación",
	locating: "Buscando su ubicación…",
	noLocation: "El navegador no dio la ubicación. Escriba los números a mano.",
	roughElevation: "La altitud viene de su aparato y puede errar en 50 m o más. Compruébela.",
	noElevation:
		"Su aparato no conoce la altitud. Escríbala: de ella dependen el sol y el punto de ebullición.",
	latitude: "Latitud, norte positivo",
	longitude: "Longitud, este positivo",
	elevationM: "Altitud sobre el mar",
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
	empty:
		"Elija un lugar, un disco y un depósito. La respuesta llega primero en palabras y luego en un gráfico.",
	loading: "Calculando…",
	slow: "Sigue calculando. La línea o el servicio van lentos.",
	stale: "Ha cambiado algo. Estas cifras son de la elección anterior.",
	again: "Reintentar",
	fill: "Escriba un número de {least} a {most}.",
	twoWays: "{typed} puede ser {whole} o {decimal}. Quite el separador de miles o escriba menos decimales.",
	fillFirst: "Algunos números faltan o están fuera de los límites.",
	hot: "Caliente a las {time} en un día despejado de {month}",
	notHot: "No se calienta lo bastante en un día despejado de {month}",
	ends: "Por la tarde el depósito queda a {endTemperatureC}; caliente quiere decir {targetTemperatureC}.",
	hotEnds: "A esa hora alcanza {targetTemperatureC}; por la tarde queda a {endTemperatureC}.",
	showers: { one: "{count} ducha", many: "{count} de duchas", other: "{count} duchas" },
	gives: "Da {usableL} a {warmC}: {showers} de {litresL} cada una.",
	enough: "Basta para los {neededL} que necesita.",
	short: "Faltan {missingL} para los {neededL} que necesita.",
	boils: "Aquí el agua hierve a {boilingPointC}, y este depósito llega a eso a las {time}.",
	chart: "Sol y depósito a lo largo del día",
	chartSays:
		"El depósito pasa de {startC} a las {start} a {endC} a las {end}. Caliente quiere decir {targetC}.",
	beam: "sol directo",
	mean: "depósito, media",
	top: "depósito, arriba",
	targetLine: "caliente: {targetC}",
	boilLine: "hierve: {boilC}",
	hotAt: "caliente: {time}",
	cautions: "Con qué tener cuidado",
	danger: "Peligro",
	warning: "Atención",
	info: "Nota",
	assumed: {
		one: "Se supuso {count} valor",
		many: "Se supusieron {count} de valores",
		other: "Se supusieron {count} valores",
	},
	assumedHint: "Lo que la lista no dice lo completa el servicio, y da su razón.",
	disclaimer:
		"Es un cálculo para un día despejado, no una promesa. Mandan las normas locales y los profesionales habilitados.",
	airAssumed: "El servicio supuso aire de {lowC} a {highC}: compárelo con el de {month} en su lugar.",
	airListed: "El aire va de {lowC} a {highC}, según la lista del proveedor.",
	faultyList: "La lista del proveedor no sirve",
	refused: "El servicio no puede responder a esto",
	barred: "Esta página no puede usar el servicio. Avise a su responsable.",
	tooOften: "Demasiadas preguntas desde aquí. Reintente en {waitMin}.",
	busy: "El servicio está ocupado. Reintente en un momento.",
	failed: "El servicio falló. No es culpa suya; reintente más tarde.",
	offline: "No hay conexión con el servicio. Revise la red y reintente.",
	timeout: "No llegó respuesta a tiempo. Reintente.",
	quote: "Petición {id}",
	reasons: {
		limitedByBoiling:
			"Aquí el agua hierve a {boilingPointC}, por debajo de los {targetTemperatureC} pedidos.",
		limitedByHighLimit: "El disco se aparta cuando la parte alta del depósito está a {highLimitC}.",
		limitedByOilLimit: "El disco se aparta cuando el aceite está a {oilLimitC}.",
		noSun: "El sol no sube lo bastante para dar luz directa.",
		sunBelowDish:
			"El sol no pasa de {highestSunAltitudeDeg}, y este disco empieza en {lowestSunAltitudeDeg}.",
		pumpNeverStarted:
			"El receptor nunca estuvo {startDifferenceK} más caliente que el depósito, y la bomba no arrancó.",
		tooLittleHeat:
			"El calor del día lleva el depósito a {endTemperatureC}. Un disco mayor o un depósito menor llegan más lejos.",
	},
	hazards: {
		loopFluidBoils:
			"{fluid}: llega a {filmC} en el absorbedor y aquí hierve a {boilingPointC}. El vapor revienta un circuito cerrado: suba el caudal, use aceite o que un instalador habilitado lo presurice.",
		tankFreezes:
			"El depósito está en aire de {airC}. Respiradero y tubos se hielan antes, y un respiradero tapado lo revienta: cúbralo o caliéntelos, según un fontanero habilitado.",
		receiverShade:
			"El receptor, de {outerDiameterM}, da sombra a {shade} del disco, no a {blocked}: la respuesta peca de luminosa.",
		concentratedLight:
			"El foco ciega, quema la piel y prende fuego al instante. Cubra o aparte el disco antes de trabajar, use protección ocular homologada y aleje a las personas del haz.",
		flatCoilInFocus:
			"La luz cae en las vueltas interiores: el fluido se carboniza y el tubo se perfora. Use una cavidad o que un instalador habilitado saque el serpentín del foco.",
		scald:
			"El depósito guarda agua a {tankTemperatureC}, que escalda. Ponga una válvula mezcladora termostática: {tapTemperatureC} en el grifo, o lo que diga la norma local.",
		closedTank:
			"Un depósito cerrado puede reventar. Necesita una válvula homologada de alivio de temperatura y presión ({reliefPressureKpa}) con salida segura y sin llaves en medio, puesta por un fontanero habilitado.",
		openVent:
			"Un depósito abierto es seguro solo mientras su respiradero esté libre de hielo, cal y llaves, como pide la norma local.",
		waterBoils:
			"El depósito hierve, aquí a {boilingPointC}. El vapor escalda y expulsa agua. Baje el límite superior o tome menos sol.",
		waterNearBoiling:
			"El depósito acaba a {topTemperatureC}, cerca de hervir a {boilingPointC}. Haga probar el límite superior por alguien habilitado.",
		fluidAboveBulkLimit:
			"{fluid}: llega a {fluidTemperatureC} y aguanta unos {limitC}. Se degrada y puede arder: que un instalador habilitado baje el límite del aceite.",
		fluidAboveFilmLimit:
			"{fluid}: en la pared del receptor llega a {filmTemperatureC} y aguanta unos {limitC}. Se carboniza: que un instalador habilitado suba el caudal o baje el límite.",
		fluidAboveFlashPoint:
			"{fluid}: se inflama a unos {flashPointC}; sin caudal y a pleno sol el receptor llega a {stagnationTemperatureC}. El disco debe apartarse solo ante cualquier fallo. Tenga un extintor para aceite y siga la norma contra incendios.",
		fluidBurns:
			"{fluid}: arde; su punto de inflamación es de unos {flashPointC}. Evite fugas en el aislamiento, tenga un extintor para aceite y siga la norma contra incendios.",
		pumpStops:
			"Si la bomba o la corriente paran a pleno sol, el receptor llega a {stagnationTemperatureC}. El disco debe apartarse solo; que alguien habilitado lo compruebe.",
		expansionTooSmall:
			"Los {contentL} del circuito crecen {neededL} al calentarse, con sitio para {providedL}: reventaría. Ponga un vaso mayor, calculado por un instalador habilitado.",
		expansion:
			"Los {contentL} del circuito crecen {neededL} al calentarse. Deje {providedL} de sitio, según la norma local.",
		electricShock:
			"La bomba y los motores están a la intemperie. Use muy baja tensión, o un diferencial y una toma de tierra, por un electricista habilitado.",
		mayFreeze:
			"El aire ({airC}) se supuso; una helada lo revienta ({place}). Consulte su noche más fría; vacíelo o cúbralo según un fontanero habilitado.",
		loopFreezes:
			"{fluid}: se hiela a {limitC}, y el aire baja a {airC}. El hielo revienta el circuito: vacíelo o use un fluido que aguante, según un instalador habilitado.",
		loopStiffens:
			"{fluid}: deja de fluir hacia {limitC}, y el aire baja a {airC}. Elija un fluido más ligero o calefacción de tubería.",
		legionella:
			"Parte del depósito acaba a {coldestLayerC}. La legionela crece entre 25 y 45 °C y muere a {safeTemperatureC}: lleve allí toda el agua tan a menudo como pida la norma sanitaria.",
		singleWall:
			"{fluid}: una sola pared lo separa del agua, y una fuga no se ve. Use un serpentín de doble pared, o no beba ni cocine con esta agua.",
		laggingTooHot:
			"El aislamiento ({place}: {material}) puede ver {hottestC} y aguanta unos {limitC}. Elija uno cuya ficha lo cubra.",
		wetInsulation:
			"El aislamiento está mojado o sin cubierta. Mojado pierde varias veces más calor: fórrelo y selle las juntas.",
		plasticTooHot:
			"{place} ({material}): puede ver {hottestC}, aguanta unos {limitC} y luego revienta. Use metal, según un fontanero habilitado.",
		copperWithGalvanised:
			"Cobre y acero galvanizado en la misma agua corroen el acero. Ponga un manguito dieléctrico homologado o use un solo metal.",
		galvanisedTooHot:
			"El acero galvanizado pierde su protección por encima de {limitC}; este depósito acaba a {topTemperatureC}. Manténgalo por debajo o elija otro.",
		windAndWeight:
			"Un disco de {mirrorAreaM2} es una vela, y {waterL} de agua pesan. Un ingeniero debe comprobar techo, mástil y anclajes; el disco debe plegarse solo en la tormenta.",
		fibreDust:
			"Al cortarlo ({material}) suelta fibras que dañan piel, ojos y pulmones. Use guantes, manga larga, gafas y mascarilla.",
		carcinogenicFibre:
			"Las fibras ({material}) pueden causar cáncer. Elija otro aislamiento; solo gente formada puede trabajarlas.",
		glass:
			"El vidrio del receptor puede estallar por el calor o la lluvia. Use vidrio templado, guantes, gafas y un instalador cualificado.",
		starvedFlow:
			"Durante {timeMin} el fluido frío y espeso frena la bomba ({fluid}). Consulte a un instalador habilitado.",
		heatTakenBack:
			"El circuito vuelve a sacar {takenBackKwh} kWh del agua. Un electricista habilitado puede montar un control que atienda al sol.",
		lowBoilingPoint: "A {elevationM} el agua hierve a {boilingPointC}. Ajuste a eso límites y válvulas.",
	},
	names: {
		"Mineral oil ISO VG": "Aceite mineral ISO VG",
		"Vegetable oil": "Aceite vegetal",
		Water: "Agua",
		receiver: "receptor",
		loop: "circuito",
		coil: "serpentín",
		"high-density polyethylene": "polietileno",
		"supply pipe": "tubo de ida",
		"return pipe": "tubo de vuelta",
		tank: "depósito",
		"rock wool pipe section": "lana de roca",
		"glass wool pipe section": "lana de vidrio",
		"refractory ceramic fibre blanket": "fibra cerámica",
	},
};
