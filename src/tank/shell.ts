import { DomainError } from "../errors.ts";
import { insulationConductivity, insulationMaterial } from "../heat/insulation.ts";
import { cylinderFilm } from "../heat/outer-film.ts";
import { shellGeometry } from "./geometry.ts";
import { standsOutdoors, type Tank } from "./tank.ts";

export interface ShellLoss {
	readonly coefficient: number; // of the whole shell, fittings included, on water over air [W/K]
	readonly surfaceTemperature: number; // of the insulation's skin [K]
}

const MOST_ITERATIONS = 100;
const CLOSE = 1e-6; // [K]

/** Heat loss coefficient of a tank's shell, one pass from a near guess of its skin temperature.
 *  Water and skin stand in series with wall and insulation (conductivity at its mean temperature) and the outer film; wall and ends
 *  share one skin temperature. In a march the skin of the last step is guess enough: repeated, the pass gains a digit or more.
 *  @param waterTemperature  mean of the layers [K]     @param ambient  air around the tank [K]
 *  @param wind  outdoors [m/s]; a tank indoors stands in still air whatever it is     @param pressure  of the air [Pa]
 *  Assumes the film of a horizontal cylinder of the insulation's diameter on every face, radiation to surroundings at air
 *  temperature, no resistance inside. Behind 5 cm of insulation the film is a tenth of the resistance: 20 % of it is 2 % of the loss.
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
		laggingResistance(tank, shell.wallConduction + 2 * shell.endConduction, waterTemperature, surfaceGuess) +
		tank.wallThickness / (tank.wallConductivity * shell.innerArea);
	const outside = 1 / ((film.convective + film.radiative) * shell.outerArea);
	const resistance = within + outside;
	return {
		coefficient: tank.fittingsFactor / resistance,
		surfaceTemperature: ambient + ((waterTemperature - ambient) * outside) / resistance,
	};
}

/** Resistance of the insulation [K/W]; none without insulation. */
function laggingResistance(tank: Tank, shapeFactor: number, hot: number, cold: number): number {
	const { material, moisture, thickness } = tank.insulation;
	if (thickness === 0) return 0;
	return 1 / (shapeFactor * insulationConductivity(insulationMaterial(material), (hot + cold) / 2, moisture));
}

/** The same with the skin temperature found to 1e-6 K by repeating the pass; DomainError no_convergence if it does not settle. */
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
		"the skin temperature of the tank does not settle",
		{
			waterTemperature,
			ambient,
		},
	);
}
