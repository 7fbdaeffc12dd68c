import { GAS_CONSTANT_DRY_AIR } from "../constants.ts";
import { polynomial } from "../numeric/polynomial.ts";

/** Dry air at one temperature and pressure. */
export interface Air {
	readonly density: number; // [kg/m³]
	readonly heatCapacity: number; // [J/kgK]
	readonly viscosity: number; // dynamic [Pa s]
	readonly kinematicViscosity: number; // [m²/s]
	readonly conductivity: number; // [W/mK]
	readonly prandtl: number; // [-]
	readonly expansion: number; // volumetric, 1/T of an ideal gas [1/K]
}

const LOW = 200; // [K]
const HIGH = 1000; // [K]
const KILO = 1000; // [K]

// Fit of cp against T/1000 K between LOW and HIGH
const HEAT_CAPACITY = [1000.396, 96.17599, -859.0212, 2668.17, -2646.575, 882.0571] as const; // [J/kgK] ± 0.04 %, Lemmon et al. 2000, table 12, as in public implementations

/** Heat capacity of dry air as an ideal gas, constant outside 200–1000 K [J/kgK]. */
function heatCapacityAt(temperature: number): number {
	const bounded = Math.min(Math.max(temperature, LOW), HIGH);
	return polynomial(HEAT_CAPACITY, bounded / KILO);
}

/** Transport properties of dry air as an ideal gas.
 *  ρ = p/RT; μ = 1.458e-6 T^1.5/(T + 110.4); k = 2.646 38e-3 T^1.5/(T + 245.4·10^(−12/T))
 *  @param temperature [K]     @param pressure [Pa]
 *  Range   200–1000 K, near 1 bar and below; outside, the formulas for ρ, μ, k are extrapolated and cp is constant
 *  Error   300–500 K: ν 1.3 %, k 0.8 %, Pr 0.6 %, cp 0.3 %; at 1000 K: ν 2.2 % low, k 1.3 % high; humidity neglected
 *  Source  U.S. Standard Atmosphere, 1976, eq. 51 and 53; cp: Lemmon, Jacobsen, Penoncello & Friend,
 *          J. Phys. Chem. Ref. Data 29 (2000) 331–385
 *  Check   Incropera & DeWitt, Table A.4   tests/reference/air.reference.ts */
export function air(temperature: number, pressure: number): Air {
	const density = pressure / (GAS_CONSTANT_DRY_AIR * temperature);
	const power = temperature * Math.sqrt(temperature); // T^1.5
	const viscosity = (1.458e-6 * power) / (temperature + 110.4); // eq. 51
	const conductivity =
		(2.64638e-3 * power) / (temperature + 245.4 * Math.exp((-12 * Math.LN10) / temperature)); // eq. 53, 10^(−12/T)
	const heatCapacity = heatCapacityAt(temperature);
	return {
		density,
		heatCapacity,
		viscosity,
		kinematicViscosity: viscosity / density,
		conductivity,
		prandtl: (heatCapacity * viscosity) / conductivity,
		expansion: 1 / temperature,
	};
}
