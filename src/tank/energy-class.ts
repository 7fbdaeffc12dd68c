import { requireWithin } from "../errors.ts";
import { power } from "../numeric/power.ts";

/** Upper limits of standing loss S = a + b·V^0.4 [W, V in litres], best class first; above the last is class G. */
const LIMITS = [
	["A+", 5.5, 3.16],
	["A", 8.5, 4.25],
	["B", 12, 5.93],
	["C", 16.66, 8.33],
	["D", 21, 10.33],
	["E", 26, 13.66],
	["F", 31, 16.66],
] as const; // Regulation (EU) 812/2013, Annex II, table 2

export type EnergyClass = (typeof LIMITS)[number][0] | "G";

const LITRES_PER_CUBIC_METRE = 1000;

/** Upper limit of the standing loss of a hot water storage tank in a class [W].
 *  @param volume  storage volume [m³]; the formula of the regulation uses litres
 *  Source  Regulation (EU) 812/2013, Annex II, table 2
 *  Check   six volumes × seven classes, tests/reference/tank.reference.ts */
export function standingLossLimit(energyClass: Exclude<EnergyClass, "G">, volume: number): number {
	requireWithin("tank.volume", volume, 0, Number.MAX_VALUE);
	const [, a, b] = LIMITS.find(([name]) => name === energyClass)!;
	return a + b * power(volume * LITRES_PER_CUBIC_METRE, 0.4);
}

/** Upper limits of the standing loss [W] of all classes for a volume [m³], best class first. */
export function energyClassLimits(
	volume: number,
): readonly { readonly energyClass: Exclude<EnergyClass, "G">; readonly below: number }[] {
	return LIMITS.map(([name]) => ({ energyClass: name, below: standingLossLimit(name, volume) }));
}

/** Energy class of a hot water storage tank.
 *  @param standingLoss  at 65 °C inside and 20 °C around [W]     @param volume  storage volume [m³]
 *  Range   the label covers tanks up to 0.5 m³; beyond, the class follows from the formula only
 *  Source  Regulation (EU) 812/2013, Annex II, table 2 */
export function energyClass(standingLoss: number, volume: number): EnergyClass {
	requireWithin("tank.standingLoss", standingLoss, 0, Number.MAX_VALUE);
	for (const [name] of LIMITS) if (standingLoss < standingLossLimit(name, volume)) return name;
	return "G";
}
