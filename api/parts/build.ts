import { type Build, hasTube } from "../../src/index.ts";
import type { DayRequest } from "./day-request.ts";

/** Materials and covers of a request's plant, which only its cautions depend on. */
export function buildOf({
	tank,
	coil,
	loop,
	receiver,
}: Pick<DayRequest, "tank" | "coil" | "loop" | "receiver">): Build {
	const outdoors = [
		loop.supply.insulation,
		loop.return.insulation,
		...(hasTube(receiver) ? [receiver.insulation] : []),
		...(tank.surroundingsC === "outdoors" ? [tank.insulation] : []),
	];
	return {
		tankWall: tank.wallMaterial,
		coilWall: coil.material,
		pipeWalls: [loop.supply.material, loop.return.material],
		weatherproof: outdoors.every(({ weatherproof, thicknessMm }) => weatherproof || thicknessMm === 0),
	};
}
