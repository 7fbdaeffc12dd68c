import { coilFilmOutsideRange } from "../coil/conductance.ts";
import { apertureMethod, dishMethods } from "../dish/methods.ts";
import { receiverTilt } from "../dish/receiver-tilt.ts";
import type { Insulation } from "../heat/insulation.ts";
import { CROSS_FLOW, HELICAL_FILM, HORIZONTAL_TUBE, insulationMethod } from "../heat/methods.ts";
import { type Citation, inRange, type Method } from "../methods.ts";
import type { ReceiverConditions } from "../receiver/conditions.ts";
import { receiverFilmOutsideRange } from "../receiver/film.ts";
import { receiverMethods } from "../receiver/methods.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { Weather } from "../sky/weather.ts";
import { STRATIFIED_TANK } from "../tank/methods.ts";
import type { PlantModel } from "./model.ts";
import type { DayRecords } from "./records.ts";

const HELICAL: Citation = { name: "Film inside a helical tube", ...HELICAL_FILM };
const FRICTION: Citation = {
	name: "Friction in tubes of any regime",
	source: "Churchill, Chemical Engineering 84 (1977) 91–92; White, Proc. R. Soc. A 123 (1929) 645–663",
	confirmed: true,
};
const BOILING: Citation = {
	name: "Boiling point at the pressure of the elevation",
	source: "IAPWS-IF97, region 4; ISO 2533:1975",
	confirmed: true,
};

/** Methods behind the result of a day, each with a flag where the day is outside its published range. */
export function dayMethods(model: PlantModel, records: DayRecords, weather: Weather): readonly Method[] {
	const { dish, receiver, loop, tank } = model.plant;
	const coldest = weather.ambient.reduce((least, t) => Math.min(least, t), Number.POSITIVE_INFINITY);
	return [
		...(hasTube(receiver) ? dishMethods(dish) : [apertureMethod(dish)]),
		...receiverMethods(receiver, [extremeState(model, records, weather, coldest)]),
		{ ...HELICAL, outsideRange: filmOutsideRange(model, records) },
		inRange(HORIZONTAL_TUBE),
		inRange(CROSS_FLOW),
		inRange(FRICTION),
		layerMethod("Supply pipe", loop.supply.insulation, records.columns.oilHot, coldest),
		layerMethod("Return pipe", loop.return.insulation, records.columns.oilCold, coldest),
		layerMethod("Tank", tank.insulation, records.columns.tankTop, coldest),
		inRange(STRATIFIED_TANK),
		inRange(BOILING),
	];
}

/** The receiver at its highest temperature, in the strongest wind and the coldest air of the day, under the highest sun. */
function extremeState(
	{ airPressure, plant: { dish, site } }: PlantModel,
	{ maximumFilm }: DayRecords,
	weather: Weather,
	ambient: number,
): ReceiverConditions {
	const most = (column: Float64Array) => column.reduce((a, b) => Math.max(a, b), 0);
	return {
		wallTemperature: maximumFilm,
		ambient,
		wind: most(weather.wind),
		pressure: airPressure,
		altitude: receiverTilt(dish, site.latitude, most(weather.sunAltitude)),
	};
}

/** Whether the film in coil or receiver is outside its range in any row of the series. */
function filmOutsideRange(model: PlantModel, records: DayRecords): boolean {
	const { coil, receiver, loop } = model.plant;
	const { oilHot, flow } = records.columns;
	return oilHot.some(
		(oil, row) =>
			flow[row]! > 0 &&
			(coilFilmOutsideRange(coil, loop.fluid, oil, flow[row]!) ||
				(hasTube(receiver) && receiverFilmOutsideRange(receiver, loop.fluid, oil, flow[row]!))),
	);
}

function layerMethod(
	place: string,
	insulation: Insulation,
	inner: readonly number[],
	coldest: number,
): Method {
	const hottest = inner.reduce((most, t) => Math.max(most, t), 0);
	return insulationMethod(place, insulation, hottest, coldest);
}
