import { coilFilmOutsideRange } from "../coil/conductance.ts";
import { type Insulation, insulationMaterial, insulationOutsideRange } from "../heat/insulation.ts";
import type { Method } from "../methods.ts";
import type { Weather } from "../sky/weather.ts";
import type { PlantModel } from "./model.ts";
import type { DayRecords } from "./records.ts";

type Rule = Omit<Method, "outsideRange">;

const INTERCEPT: Rule = {
	name: "Intercept factor, Gaussian spread by ring and direction",
	source: "Stine & Geyer, Power from the Sun, ch. 8; Rabl, Active Solar Collectors, 1985",
};
const FIXED_FOCUS: Rule = {
	name: "Seasonal aperture of a fixed-focus dish",
	source: "Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490–1502",
};
const CAVITY: Rule = {
	name: "Natural convection from a cavity",
	source: "Stine & McDonald, ISES Solar World Congress, Kobe 1989",
};
const CAVITY_WIND: Rule = {
	name: "Wind on a cavity",
	source: "Ma, Sandia SAND92-7293, 1993",
};
const COIL_FACE: Rule = {
	name: "Convection from a flat coil, wind and natural combined",
	source: "Churchill, AIChE J. 23 (1977) 10–16",
};
const COVER_GAP: Rule = {
	name: "Convection across the gap under a cover",
	source: "ElSherbiny, Raithby & Hollands, J. Heat Transfer 104 (1982) 96–102",
};
const EFFICIENCY_LINE: Rule = {
	name: "Efficiency line of a measured dish",
	source: "ISO 9806, linear form on beam irradiance",
};
const HELICAL: Rule = {
	name: "Film inside a helical tube",
	source:
		"Janssen & Hoogendoorn, Int. J. Heat Mass Transfer 21 (1978) 1197–1206; VDI Heat Atlas 2010, ch. G3",
};
const HORIZONTAL_TUBE: Rule = {
	name: "Natural convection around a horizontal tube",
	source: "Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053",
};
const CROSS_FLOW: Rule = {
	name: "Wind across a tube",
	source: "Churchill & Bernstein, J. Heat Transfer 99 (1977) 300–306",
};
const FRICTION: Rule = {
	name: "Friction in tubes of any regime",
	source: "Churchill, Chemical Engineering 84 (1977) 91–92; White, Proc. R. Soc. A 123 (1929) 645–663",
};
const STORE: Rule = {
	name: "Stratified tank of mixed layers",
	source: "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 8",
};
const BOILING: Rule = {
	name: "Boiling point at the pressure of the elevation",
	source: "IAPWS-IF97, region 4; ISO 2533:1975",
};

const CAVITY_COLDEST_WALL = 673.15; // [K] Stine & McDonald measured walls of 400–700 °C
const CAVITY_STRONGEST_WIND = 9; // [m/s] Ma measured up to here

const inRange = (rule: Rule): Method => ({ ...rule, outsideRange: false });

/** The correlations a day's answer rests on, each with a flag where the day took it outside its published range. */
export function dayMethods(model: PlantModel, records: DayRecords, weather: Weather): readonly Method[] {
	const { dish, loop, tank } = model.plant;
	return [
		...(dish.kind === "fixedFocusOffset" ? [inRange(FIXED_FOCUS)] : []),
		...receiverMethods(model, records, weather),
		{ ...HELICAL, outsideRange: coilStrayed(model, records) },
		inRange(HORIZONTAL_TUBE),
		inRange(CROSS_FLOW),
		inRange(FRICTION),
		laggingMethod("Supply pipe", loop.supply.insulation, records.columns.oilHot, records),
		laggingMethod("Return pipe", loop.return.insulation, records.columns.oilCold, records),
		laggingMethod("Tank", tank.insulation, records.columns.tankTop, records),
		inRange(STORE),
		inRange(BOILING),
	];
}

function receiverMethods(model: PlantModel, records: DayRecords, weather: Weather): readonly Method[] {
	switch (model.plant.receiver.kind) {
		case "cavity":
			return [
				inRange(INTERCEPT),
				{ ...CAVITY, outsideRange: records.maximumFilm < CAVITY_COLDEST_WALL },
				{ ...CAVITY_WIND, outsideRange: weather.wind.some((wind) => wind > CAVITY_STRONGEST_WIND) },
			];
		case "openCoil":
			return [INTERCEPT, COIL_FACE].map(inRange);
		case "glazedCoil":
			return [INTERCEPT, COVER_GAP, COIL_FACE].map(inRange);
		case "efficiencyLine":
			return [inRange(EFFICIENCY_LINE)];
	}
}

/** Whether the coil's inside film was asked outside its range at any row of the series. */
function coilStrayed(model: PlantModel, records: DayRecords): boolean {
	const { oilHot, flow } = records.columns;
	return oilHot.some((oil, row) =>
		coilFilmOutsideRange(model.plant.coil, model.plant.loop.fluid, oil, flow[row]!),
	);
}

function laggingMethod(
	place: string,
	insulation: Insulation,
	inner: readonly number[],
	records: DayRecords,
): Method {
	const material = insulationMaterial(insulation.material);
	const hottest = inner.reduce((most, t) => Math.max(most, t), 0);
	const coldest = records.columns.ambient.reduce((least, t) => Math.min(least, t), hottest);
	return {
		name: `${place} lagging: conductivity of ${material.name} at its mean temperature`,
		source: material.source,
		outsideRange: insulation.thickness > 0 && insulationOutsideRange(material, hottest, coldest),
	};
}
