export const STEFAN_BOLTZMANN = 5.670374419e-8; // [W/m²K⁴] exact by definition, CODATA 2018
export const GRAVITY = 9.80665; // [m/s²] exact by convention, standard acceleration of free fall, ISO 80000-3
export const GAS_CONSTANT_DRY_AIR = 287.05287; // [J/kgK] ± 0.001, ISO 2533:1975
export const STANDARD_PRESSURE = 101_325; // [Pa] exact by convention, ISO 2533:1975
export const ICE_POINT = 273.15; // [K] exact by definition of the degree Celsius
export const SOLAR_CONSTANT = 1361.1; // [W/m²] ± 0.5, Gueymard, Solar Energy 169 (2018) 434–440 and the reevaluation of the same year, abstracts
