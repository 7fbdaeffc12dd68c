import { ICE_POINT } from "../constants.ts";
import { insulationMaterial, insulationOutsideRange } from "../heat/insulation.ts";
import type { Method } from "../methods.ts";
import type { Receiver, TubeReceiver } from "./receiver.ts";

const CAVITY_DATA = [400 + ICE_POINT, 700 + ICE_POINT] as const; // [K] walls that Stine & McDonald measured (value from memory)

/** What a receiver's losses rest on, and where that is stretched.
 *  @param wallTemperature  the hottest that counts [K]     @param ambient  [K] */
export function receiverMethods(
	receiver: Receiver,
	wallTemperature: number,
	ambient: number,
): readonly Method[] {
	if (receiver.kind === "efficiencyLine")
		return [
			{ name: "receiver: efficiency line", source: "the measured coefficients given", outsideRange: false },
		];
	return [
		...faceMethods(receiver.kind, wallTemperature),
		{
			name: `receiver: lagging of ${insulationMaterial(receiver.insulation.material).name}`,
			source: insulationMaterial(receiver.insulation.material).source,
			outsideRange:
				receiver.insulation.thickness > 0 &&
				insulationOutsideRange(insulationMaterial(receiver.insulation.material), wallTemperature, ambient),
		},
	];
}

function faceMethods(kind: TubeReceiver["kind"], wall: number): Method[] {
	const disc: Method = {
		name: "receiver: wind and buoyancy on the face",
		source:
			"Incropera & DeWitt 6e, eq. 7.30; Churchill & Chu 1975; McAdams 1954; cubes added after Churchill 1977",
		outsideRange: false,
	};
	switch (kind) {
		case "cavity":
			return [
				{
					name: "receiver: free convection from the cavity",
					source: "Stine & McDonald, ISES Solar World Congress, Kobe 1989",
					outsideRange: !(wall >= CAVITY_DATA[0] && wall <= CAVITY_DATA[1]),
				},
				{ name: "receiver: wind at the cavity", source: "Ma, SAND92-7293, 1993", outsideRange: false },
			];
		case "openCoil":
			return [disc];
		case "glazedCoil":
			return [
				disc,
				{
					name: "receiver: air between coil and cover",
					source: "ElSherbiny, Raithby & Hollands 1982; Arnold, Catton & Edwards 1976",
					outsideRange: false,
				},
			];
	}
}
