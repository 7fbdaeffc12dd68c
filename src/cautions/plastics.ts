import { WALL_MATERIALS, type WallMaterialId } from "../heat/wall-materials.ts";
import { type Caution, type CautionRule, temperature } from "./caution.ts";

/** Plastics above their service limit. The coil's tube passes through the wall of the tank, which there is as hot as the oil; both pipes are
 *  connected to the receiver, and reach its stagnation temperature when the flow stops. */
export const plastics: CautionRule = ({ build, outcome: { series, endTop, maximumOil, stagnation } }) => {
	const hottestTop = series.tankTop.reduce((most, top) => Math.max(most, top), endTop);
	const [supply, back = supply] = build.pipeWalls;
	const atReceiver = Math.max(maximumOil, stagnation);
	return plasticsTooHot([
		["tank", build.tankWall, Math.max(hottestTop, maximumOil)],
		["coil", build.coilWall, maximumOil],
		["supply pipe", supply, atReceiver],
		["return pipe", back, atReceiver],
	]);
};

type Place = readonly [where: string, wall: WallMaterialId | undefined, hottest: number];

/** Plastics above their service limit, for each place with its highest wall temperature [K]. */
export function plasticsTooHot(places: readonly Place[]): readonly Caution[] {
	return places.flatMap(([place, wall, hottest]) => {
		if (wall === undefined) return [];
		const { name, serviceLimit } = WALL_MATERIALS[wall];
		if (serviceLimit === undefined || hottest <= serviceLimit) return [];
		return [
			{
				code: "plasticTooHot",
				severity: "danger",
				parameters: {
					place,
					material: name,
					hottest: temperature(hottest),
					limit: temperature(serviceLimit),
				},
				message:
					"The {place} of {material} can reach {hottest}; its limit is about {limit}, above which it softens and bursts, and hot fluid scalds. Use metal, or what a licensed plumber and its data sheet allow.",
			},
		];
	});
}
