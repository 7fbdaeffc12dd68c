import { requireWithin } from "../errors.ts";
import { saturationPressure } from "../fluids/saturation.ts";
import { elevationAtPressure } from "./atmosphere.ts";

/** Pressure and elevation from a measured boiling point, with their uncertainties. */
export interface MeasuredBoiling {
	readonly pressure: number; // of the air [Pa]
	readonly pressureUncertainty: number; // ± from the thermometer [Pa]
	readonly elevation: number; // of the standard atmosphere [m]
	readonly fromThermometer: number; // ± of the elevation [m]
	readonly fromWeather: number; // ± of the elevation [m]
	readonly elevationUncertainty: number; // ± both, added in quadrature [m]
}

const WEATHER = 1300; // [Pa] swing of the air's pressure about the standard atmosphere; common practice, no source
const WIDEST = 5; // [K] a thermometer with a greater error gives no useful elevation

/** Elevation from a boiling point measured with a thermometer of known uncertainty.
 *  Both errors are propagated with the slope at the measured point; those of weather and thermometer are independent.
 *  @param boilingPoint            of water in an open vessel [K]
 *  @param thermometerUncertainty  ± of the reading [K]
 *  Range   boiling points of −430 to 11 000 m, 0 to 5 K, else DomainError out_of_range
 *  Error   ± 0.5 K is about ± 150 m, and so is ordinary weather; dissolved salts raise the reading:
 *          10 g per litre by 0.17 K, about 50 m
 *  Source  IAPWS R7-97(2012), region 4; ISO 2533:1975 */
export function measuredBoiling(boilingPoint: number, thermometerUncertainty: number): MeasuredBoiling {
	requireWithin("sky.thermometer", thermometerUncertainty, 0, WIDEST);
	const pressure = saturationPressure(boilingPoint);
	const elevation = elevationAtPressure(pressure);
	const step = boilingPoint > MIDDLE ? -STEP : STEP; // towards the middle of the range, to stay within it
	const nearby = saturationPressure(boilingPoint + step);
	const pressureSlope = (nearby - pressure) / step; // [Pa/K]
	const elevationSlope = (elevationAtPressure(nearby) - elevation) / (nearby - pressure); // [m/Pa]
	const pressureUncertainty = Math.abs(pressureSlope) * thermometerUncertainty;
	const fromThermometer = Math.abs(elevationSlope) * pressureUncertainty;
	const fromWeather = Math.abs(elevationSlope) * WEATHER;
	return {
		pressure,
		pressureUncertainty,
		elevation,
		fromThermometer,
		fromWeather,
		elevationUncertainty: Math.hypot(fromThermometer, fromWeather),
	};
}

const MIDDLE = 358.15; // [K]
const STEP = 0.01; // [K] of the difference quotient
