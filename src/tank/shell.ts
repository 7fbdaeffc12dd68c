import { DomainError } from "../errors.ts";
import { insulationConductivity, insulationMaterial } from "../heat/insulation.ts";
import { cylinderFilm } from "../heat/outer-film.ts";
import { shellGeometry } from "./geometry.ts";
import { standsOutdoors, type Tank } from "./tank.ts";

export interface ShellLoss {
	readonly coefficient: number; // of the complete shell with fittings, based on water minus air temperature [W/K]
	readonly surfaceTemperature: number; // of the insulation [K]
}

const MOST_ITERATIONS = 100;
const CLOSE = 1e-6; // [K]

/** Heat loss coefficient of a tank's shell, one iteration from a close guess of its surface temperature.
 *  Wall, insulation (conductivity at its mean temperature) and outer film are in series; wall and ends
 *  have one surface temperature. In a simulation the surface temperature of the previous step is a sufficient guess: each iteration gains a digit.
 *  @param waterTemperature  mean of the layers [K]     @param ambient  air around the tank [K]
 *  @param wind  outdoors [m/s]; ignored for a tank indoors, which is in still air     @param pressure  of the air [Pa]
 *  Assumes the film of a horizontal cylinder of the insulation's diameter on all faces, radiation to surroundings at air
 *  temperature, no resistance inside. With 5 cm of insulation the film is a tenth of the resistance: 20 % of it is 2 % of the loss.
 *  Source  as `shellGeometry`, `insulationConductivity` and `cylinderFilm`
 *  Check   limits: gale, bare, thick insulation, tests/unit/tank/shell.test.ts */
export function shellLossCoefficient(
	tank: Tank,
	waterTemperature: number,
	ambient: number,
	wind: number,
	pressure: number,
	surfaceGuess: number,
): ShellLoss {
	const shell = shellGeometry(tank);
	const film = cylinderFilm(
		shell.outerDiameter,
		surfaceGuess,
		ambient,
		standsOutdoors(tank.surroundings) ? wind : 0,
		pressure,
		tank.insulation.surfaceEmittance,
	);
	const within =
		insulationResistance(
			tank,
			shell.wallConduction + 2 * shell.endConduction,
			waterTemperature,
			surfaceGuess,
		) +
		tank.wallThickness / (tank.wallConductivity * shell.innerArea);
	const outside = 1 / ((film.convective + film.radiative) * shell.outerArea);
	const resistance = within + outside;
	return {
		coefficient: tank.fittingsFactor / resistance,
		surfaceTemperature: ambient + ((waterTemperature - ambient) * outside) / resistance,
	};
}

/** Resistance of the insulation [K/W]; zero without insulation. */
function insulationResistance(tank: Tank, shapeFactor: number, hot: number, cold: number): number {
	const { material, moisture, thickness } = tank.insulation;
	if (thickness === 0) return 0;
	return 1 / (shapeFactor * insulationConductivity(insulationMaterial(material), (hot + cold) / 2, moisture));
}

/** The same with the surface temperature iterated to 1e-6 K; DomainError no_convergence where the iteration does not converge. */
export function convergedShellLoss(
	tank: Tank,
	waterTemperature: number,
	ambient: number,
	wind: number,
	pressure: number,
): ShellLoss {
	let surface = ambient + (waterTemperature - ambient) / 4;
	for (let i = 0; i < MOST_ITERATIONS; i++) {
		const pass = shellLossCoefficient(tank, waterTemperature, ambient, wind, pressure, surface);
		if (Math.abs(pass.surfaceTemperature - surface) < CLOSE) return pass;
		surface = pass.surfaceTemperature;
	}
	throw new DomainError(
		"no_convergence",
		"tank.surfaceTemperature",
		"the surface temperature of the tank does not converge",
		{
			waterTemperature,
			ambient,
		},
	);
}
