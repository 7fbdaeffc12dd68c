import type { Dish } from "../dish/dish.ts";
import { dishOptics } from "../dish/optics.ts";
import { DomainError } from "../errors.ts";
import type { Fluid } from "../fluids/fluid.ts";
import { bestApertureDiameter } from "../receiver/best-aperture.ts";
import { absorberWidth, narrowestAbsorber } from "../receiver/narrowest-absorber.ts";
import { proportionedReceiver } from "../receiver/proportions.ts";
import { hasCavity, hasTube, type Receiver } from "../receiver/receiver.ts";
import { standardPressure } from "../sky/atmosphere.ts";
import type { Designed } from "./assumption.ts";
import { receiverBearingSun } from "./receiver-sizes.ts";
import { type SparseReceiver, type SparseTubeReceiver, unsizedReceiver } from "./sparse-receiver.ts";

// The point at which an aperture is chosen: the middle of a working day. Common practice, no source.
const DUTY = {
	beam: 800, // [W/m²]
	fluidTemperature: 353.15, // [K]
	ambient: 293.15, // [K]
	wind: 2, // [m/s]
	altitude: Math.PI / 4, // of the sun [rad]
};

/** The receiver in the focus of its dish.
 *  @param elevation  of the site [m] */
export function designReceiver(
	receiver: SparseReceiver,
	dish: Dish,
	fluid: Fluid,
	elevation: number,
): Designed<Receiver> {
	if (!hasTube(receiver)) return { design: receiver, assumed: [] };
	const pressure = standardPressure(elevation);
	const { apertureDiameter } = receiver;
	const aperture = apertureDiameter === "auto" ? bestAperture(receiver, dish, pressure) : apertureDiameter;
	const optics = dishOptics(dish, aperture, 0, 0);
	const light = optics.apertureArea * optics.shares.toReceiver;
	return receiverBearingSun(receiver, proportionedReceiver(unsizedReceiver(receiver), aperture), {
		...{ light, fluid, pressure },
	});
}

/** The same for a receiver of stated aperture in light of any source; `auto` is DomainError contradictory.
 *  @param light  entering it, over the beam [m²]     @param elevation  of the site [m] */
export function designReceiverInLight(
	receiver: SparseReceiver,
	light: number,
	fluid: Fluid,
	elevation: number,
): Designed<Receiver> {
	if (!hasTube(receiver)) return { design: receiver, assumed: [] };
	if (receiver.apertureDiameter === "auto")
		throw new DomainError(
			"contradictory",
			"receiver.apertureDiameter",
			"an automatic aperture needs a dish, whose focal spot sets its size",
			{},
		);
	const sized = proportionedReceiver(unsizedReceiver(receiver), receiver.apertureDiameter);
	return receiverBearingSun(receiver, sized, { light, fluid, pressure: standardPressure(elevation) });
}

/** The aperture that yields most heat, but wide enough to wind the tube and no wider than a cavity of stated size [m].
 *  The trade-off has one maximum. */
function bestAperture(receiver: SparseTubeReceiver, dish: Dish, pressure: number): number {
	const open = unsizedReceiver(receiver);
	const best = bestApertureDiameter(dish, open, { ...DUTY, pressure });
	const windable = Math.max(best, narrowestAbsorber(open) / absorberWidth(proportionedReceiver(open, 1)));
	const interior = hasCavity(receiver) ? receiver.innerDiameter : undefined;
	return Math.min(windable, interior ?? Number.POSITIVE_INFINITY);
}
