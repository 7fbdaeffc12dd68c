/** Kind of an error. A closed union: the HTTP edge maps each code to a status in one table. */
export type DomainCode = "out_of_range" | "contradictory" | "impossible" | "too_large" | "no_convergence";

/** Quantities and parts that an error can concern, each with its name in a sentence. A closed union: the HTTP edge maps each to a
 *  place in the request in one table. */
export const SUBJECTS = {
	time: "time",
	"site.latitude": "latitude",
	"site.longitude": "longitude",
	"site.elevation": "elevation",
	"sky.pressure": "pressure",
	"sky.thermometer": "uncertainty of the thermometer",
	"sky.turbidity": "turbidity",
	"sky.sunAltitude": "apparentAltitude",
	"sky.clearness": "clearness",
	"sky.period": "period",
	"sky.step": "step",
	"sky.ambientMinimum": "ambientMinimum",
	"sky.ambientMaximum": "ambientMaximum",
	"sky.rows": "rows of measured weather",
	"sky.irradiance": "measured irradiance",
	"sky.beam": "beam",
	"sky.diffuse": "diffuse",
	"sky.global": "global",
	"sky.ambient": "ambient",
	"sky.wind": "wind",
	"dish.size": "size of the dish",
	"dish.focalLength": "radius of the off-axis mirror over its focal length",
	"dish.lightShare": "share of the reflected light",
	"receiver.apertureDiameter": "aperture of the receiver",
	"receiver.coverGap": "gap behind the cover",
	"receiver.wallTemperature": "temperature of the absorber",
	"receiver.altitude": "sun's altitude at the receiver",
	"receiver.wind": "wind at the receiver",
	"receiver.light": "light on the absorber",
	"receiver.film": "film of the absorber's fluid",
	"loop.flow": "flow of the pump",
	"loop.pressureDrop": "pressure drop of the circuit",
	"coil.diameterRatio": "diameter ratio of the helix",
	"coil.bottom": "coil's lowest height",
	"coil.top": "coil's highest height",
	"tank.height": "tank height",
	"tank.diameter": "tank diameter",
	"tank.wallThickness": "tank wall thickness",
	"tank.insulationThickness": "tank insulation thickness",
	"tank.fill": "water in the tank",
	"tank.volume": "storage volume",
	"tank.standingLoss": "standing loss",
	"tank.portHeight": "height in the tank",
	"tank.layers": "number of layers",
	"tank.startTemperature": "start temperature of the tank",
	"tank.layerTemperature": "temperature of a layer",
	"tank.surfaceTemperature": "surface temperature of the tank",
	"tank.coolingTime": "cooling time",
	"tank.coolingStep": "step of the cooling curve",
	"tank.drawnMass": "mass drawn",
	"tap.profile": "tapping profile",
	"tap.temperature": "temperature at the tap",
	"tap.mass": "mass at the tap",
	"tap.volume": "volume drawn",
	"tap.heat": "heat drawn",
	"tap.flow": "flow at the tap",
	"insulation.material": "insulation material",
	"insulation.moisture": "moisture of the insulation",
	"fluid.temperature": "temperature of the fluid",
	"fluid.enthalpy": "enthalpy of the fluid",
	"fluid.tableRows": "rows of the table",
	"water.temperature": "temperature",
	"water.pressure": "pressure",
	"heat.Rayleigh": "Rayleigh number",
	"heat.Reynolds": "Reynolds number",
	"heat.plateFlow": "flow over a plate",
	"heat.crossFlow": "flow across a cylinder",
	"heat.exchanger": "heat exchanger",
	"run.rows": "rows of the run",
	"numeric.root": "root",
	"numeric.probability": "probability",
	"numeric.freedom": "degrees of freedom",
} as const;

export type Subject = keyof typeof SUBJECTS;

/** The only error that the core throws intentionally. `details` is plain data that can be shown to a client. */
export class DomainError extends Error {
	override readonly name = "DomainError";
	constructor(
		readonly code: DomainCode,
		readonly subject: Subject,
		message: string,
		readonly details: Readonly<Record<string, number | string>>,
	) {
		super(message);
	}
}

/** Throws `out_of_range` unless low ≤ value ≤ high; the condition is written so that NaN throws too. */
export function requireWithin(subject: Subject, value: number, low: number, high: number): void {
	if (!(value >= low && value <= high)) throw outOfRange(subject, SUBJECTS[subject], value, low, high);
}

/** The error of a value outside its range.
 *  @param name  of the quantity in a sentence: that of its subject, or a more specific one */
export function outOfRange(
	subject: Subject,
	name: string,
	value: number,
	low: number,
	high: number,
): DomainError {
	return new DomainError("out_of_range", subject, `${name} must be between ${low} and ${high}`, {
		name,
		value,
		low,
		high,
	});
}
