import { boilingPoint, standardPressure } from "../sky/atmosphere.ts";
import type { Tank } from "../tank/tank.ts";
import { type Designed, statedOr } from "./assumption.ts";
import { derived, type Grounds, practice, standard, unconfirmed } from "./grounds.ts";

/** A tank of a volume. Height and diameter follow from it where they are not stated. */
export interface SparseTank
	extends Omit<Tank, "fill" | "height" | "diameter" | "startTemperatures" | "reliefPressure"> {
	readonly volume: number; // when full [m³]
	readonly fill?: number | undefined; // water in it [m³]
	readonly height?: number | undefined; // [m]
	readonly diameter?: number | undefined; // inside [m]
	readonly startTemperature?: number | readonly number[] | undefined; // throughout, or of each layer, top first [K]
	readonly layers?: number | undefined; // of a tank that starts at one temperature
	readonly vented: boolean; // open to the air
	readonly reliefPressure?: number | undefined; // of a closed tank's valve, above the air's [Pa]
}

const SLENDERNESS = 2.2; // [-] height over diameter: slender enough to keep layers; common practice, no source
const LAYERS = 10; // [-] more layers change the litres at the tap by less than 2 %
const RELIEF_PRESSURE = 600_000; // [Pa] above the air's: the usual relief valve of a water heater, EN 1490 (value from memory)

/** @param mains  temperature of the cold feed that the tank is filled from [K] */
export function designTank(tank: SparseTank, mains: number): Designed<Tank> {
	const { volume, layers: _layers, vented: _vented, startTemperature: _start, ...rest } = tank;
	const fill = statedOr(tank.fill, "tank.fill", volume, practice("a full tank"));
	const shape = shapeOf(tank);
	const start = startOf(tank, mains);
	const relief = reliefOf(tank);
	return {
		design: {
			...rest,
			fill: fill.design,
			...shape.design,
			startTemperatures: start.design,
			reliefPressure: relief.design,
		},
		assumed: [...shape.assumed, ...fill.assumed, ...start.assumed, ...relief.assumed],
	};
}

/** Boiling point of the tank's water at its pressure [K].
 *  @param elevation  of the site [m] */
export function tankBoilingPoint(tank: Pick<Tank, "reliefPressure">, elevation: number): number {
	return boilingPoint(standardPressure(elevation) + tank.reliefPressure);
}

function shapeOf({ volume, height, diameter }: SparseTank): Designed<Pick<Tank, "height" | "diameter">> {
	const [tall, wide] = shapeFrom(volume, height, diameter);
	const grounds: Grounds =
		height === undefined && diameter === undefined
			? practice(`follows from the volume at a height of ${SLENDERNESS} diameters`)
			: derived("follows from the volume");
	const across = statedOr(diameter, "tank.diameter", wide, grounds);
	const up = statedOr(height, "tank.height", tall, grounds);
	return {
		design: { height: up.design, diameter: across.design },
		assumed: [...across.assumed, ...up.assumed],
	};
}

/** Height and diameter of a cylinder of a volume, one of them or their ratio being known. */
function shapeFrom(
	volume: number,
	height: number | undefined,
	diameter: number | undefined,
): readonly [height: number, diameter: number] {
	if (height !== undefined) return [height, diameter ?? Math.sqrt((4 * volume) / (Math.PI * height))];
	const across = diameter ?? Math.cbrt((4 * volume) / (Math.PI * SLENDERNESS));
	return [(4 * volume) / (Math.PI * across * across), across];
}

function startOf({ startTemperature, layers }: SparseTank, mains: number): Designed<Float64Array> {
	if (typeof startTemperature === "object")
		return { design: Float64Array.from(startTemperature), assumed: [] };
	const start = statedOr(
		startTemperature,
		"tank.startTemperature",
		mains,
		derived("the tank is filled from the mains"),
	);
	const count = statedOr(
		layers,
		"tank.layers",
		LAYERS,
		derived("more layers change the litres at the tap by less than 2 %; fewer blur the stratification"),
	);
	return {
		design: new Float64Array(count.design).fill(start.design),
		assumed: [...start.assumed, ...count.assumed],
	};
}

function reliefOf({ vented, reliefPressure }: SparseTank): Designed<number> {
	if (vented) return { design: 0, assumed: [] };
	return statedOr(
		reliefPressure,
		"tank.reliefPressure",
		RELIEF_PRESSURE,
		unconfirmed(standard("the usual relief valve of a water heater", "EN 1490")),
	);
}
