import type { Fluid } from "../fluids/fluid.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { secantFixedPoint } from "../numeric/secant-fixed-point.ts";
import { receiverFilmConductance } from "../receiver/film.ts";
import { type EfficiencyLineReceiver, hasTube, type TubeReceiver } from "../receiver/receiver.ts";
import { absorbedLight, type Conditions, gainAtWall, HOTTEST_WALL, isWallTemperature } from "./conditions.ts";
import type { Heater } from "./heater.ts";

/** A fluid at the inlet of the receiver. */
export interface Stream {
	readonly fluid: Fluid;
	readonly inlet: number; // [K]
	readonly massFlow: number; // [kg/s], above 0
}

/** Result of heating a stream. */
export type HeatedStream =
	| {
			readonly kind: "heated";
			readonly power: number; // massFlow × rise of enthalpy [W]
			readonly outlet: number; // [K]
			readonly hottestWall: number | undefined; // of the tube at the outlet [K]; unknown for an efficiency line
	  }
	| { readonly kind: "noGain" }; // the losses equal the absorbed light already at inlet temperature

const TOLERANCE = 1e-4; // [K] of the solved temperature: a tenth of a milliwatt of loss
const MARGIN = 1.5; // on the upper bracket: conductivity and heat capacity change by less than this as the fluid is heated

/** A fluid in steady flow through the receiver: power = massFlow·(h_out − h_in) = light absorbed − losses of the wall.
 *  The mean wall temperature exceeds that of the fluid (mean of inlet and outlet) by power/(h·A).
 *  Assumes  evenly distributed light along the tube: where a spot strikes few turns, their wall is hotter than this
 *  Error    that of the receiver's losses and film; the heat balance closes to 1e-3 W */
export function heatedStream(heater: Heater, stream: Stream, conditions: Conditions): HeatedStream {
	const absorbed = absorbedLight(heater, conditions);
	const { receiver } = heater;
	return hasTube(receiver)
		? byTube(receiver, heater.convection, absorbed, stream, conditions)
		: byLine(receiver, absorbed, stream, conditions);
}

function byLine(
	receiver: EfficiencyLineReceiver,
	absorbed: number,
	{ fluid, inlet, massFlow }: Stream,
	{ ambient }: Conditions,
): HeatedStream {
	const gain = (outlet: number) => absorbed - receiver.lossCoefficient * (outlet - ambient);
	if (!(gain(inlet) > 0)) return { kind: "noGain" };
	const cold = fluid.enthalpy(inlet);
	const outlet = bracketedRoot(
		(temperature) => massFlow * (fluid.enthalpy(temperature) - cold) - gain(temperature),
		inlet,
		Math.max(inlet, ambient) + (MARGIN * absorbed) / (massFlow * fluid.heatCapacity(inlet)) + TOLERANCE,
		TOLERANCE,
	);
	const power = massFlow * (fluid.enthalpy(outlet) - cold);
	return { kind: "heated", power, outlet, hottestWall: undefined };
}

function byTube(
	receiver: TubeReceiver,
	convection: number,
	absorbed: number,
	stream: Stream,
	conditions: Conditions,
): HeatedStream {
	const { fluid, inlet, massFlow } = stream;
	if (!(gainAtWall(receiver, convection, absorbed, conditions, inlet) > 0)) return { kind: "noGain" };
	const cold = fluid.enthalpy(inlet);
	const at = (guess: number) => {
		const power = gainAtWall(receiver, convection, absorbed, conditions, guess);
		const outlet = fluid.temperatureAtEnthalpy(cold + power / massFlow);
		const mean = (inlet + outlet) / 2;
		const conductance = receiverFilmConductance(receiver, fluid, mean, massFlow / fluid.density(mean));
		return { power, outlet, conductance, wall: mean + power / conductance };
	};
	const wall =
		secantFixedPoint(
			(guess) => (isWallTemperature(guess) ? { next: at(guess).wall } : undefined),
			inlet,
			TOLERANCE,
		)?.next ??
		bracketedRoot(
			(guess) => guess - at(guess).wall,
			inlet,
			highestWall(receiver, absorbed, stream, conditions),
			TOLERANCE,
		);
	const { power, outlet, conductance } = at(wall);
	return { kind: "heated", power, outlet, hottestWall: outlet + power / conductance };
}

/** Upper bound of the wall temperature [K]: all light transferred to fluid at rest. */
function highestWall(
	receiver: TubeReceiver,
	absorbed: number,
	{ fluid, inlet, massFlow }: Stream,
	{ ambient }: Conditions,
): number {
	const still = receiverFilmConductance(receiver, fluid, inlet, 0);
	const reach = absorbed * (1 / still + 0.5 / (massFlow * fluid.heatCapacity(inlet)));
	return Math.min(HOTTEST_WALL, Math.max(inlet, ambient) + MARGIN * reach);
}
