import { cavityAbsorptance } from "./cavity-light.ts";
import type { Receiver } from "./receiver.ts";
import { paneTransmittance, tubesAbsorptance } from "./slanted-light.ts";

const PANE_DIFFUSE_REFLECTANCE = 0.16; // [-] ± 0.01, one sheet of glass at 60°, Duffie & Beckman, § 5.5 (value from memory)

/** Share absorbed behind a pane, including multiple reflections between pane and absorber.
 *  (τα) = τα/[1 − (1 − α)·ρ_d]
 *  @param transmittance  τ of the pane for the incident light [-]
 *  @param absorptance    α [-]     @returns (τα) [-]
 *  Error   the authors use 1.01·τα for most panes instead; the two agree within 1 %
 *  Source  Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 5.5.1 (formula from memory)
 *  Check   limits   tests/unit/receiver/absorption.test.ts */
export function transmittanceAbsorptance(transmittance: number, absorptance: number): number {
	return (transmittance * absorptance) / (1 - (1 - absorptance) * PANE_DIFFUSE_REFLECTANCE);
}

/** Share of the light through the aperture of a receiver that its absorber absorbs [-].
 *  The deeper the dish, the more oblique the light: a flat spiral then reflects more of it, and a cavity reabsorbs most of what it reflects.
 *  For an efficiency line it is 1, because its optical efficiency includes absorption.
 *  @param rimAngle  half-angle of the cone of light, `lightCone` of its dish [rad] */
export function receiverAbsorptance(receiver: Receiver, rimAngle: number): number {
	switch (receiver.kind) {
		case "cavity":
			return cavityAbsorptance(receiver, rimAngle);
		case "openCoil":
			return tubesAbsorptance(receiver.absorptance, rimAngle);
		case "glazedCoil":
			return transmittanceAbsorptance(
				paneTransmittance(receiver.coverTransmittance, rimAngle),
				tubesAbsorptance(receiver.absorptance, rimAngle),
			);
		case "efficiencyLine":
			return 1;
		default:
			return receiver satisfies never;
	}
}
