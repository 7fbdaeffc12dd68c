import type { Body } from "../method.ts";

type WarmUp = Body<"warmUpTank">;
/** A name: one text for all languages, or one for each. */
export type Name = string | Readonly<Record<string, string>>;

interface Item {
	readonly id: string;
	readonly name: Name;
}

/** A dish as sold, with its receiver and loop. The fields are those of the service. */
export interface DishItem extends Item {
	readonly dish: WarmUp["dish"];
	readonly receiver?: WarmUp["receiver"];
	readonly loop?: WarmUp["loop"];
}

/** A tank as sold, with its coil. */
export interface TankItem extends Item {
	readonly tank: WarmUp["tank"];
	readonly coil?: WarmUp["coil"];
}

/** A place for visitors to choose. Its elevation is required, because sky and boiling point depend on it. */
export interface PlaceItem extends Item {
	readonly latitude: number;
	readonly longitude: number;
	readonly elevationM: number;
	/** Sky in every month. Omit the air here and state it by month. */
	readonly sky?: WarmUp["sky"];
	/** Lowest and highest air temperature on a clear day of each month, from January. The service assumes them where they are absent. */
	readonly monthlyAmbientC?: readonly (readonly [lowest: number, highest: number])[];
}

/** A supplier's dishes, tanks and places. */
export interface Catalogue {
	readonly dishes: readonly DishItem[];
	readonly tanks: readonly TankItem[];
	readonly places?: readonly PlaceItem[];
	/** Water at 40 °C for one person a day; 35 L by default. The page shows it. */
	readonly litresPerPerson?: number;
	/** Temperature that counts as hot; 60 °C by default. */
	readonly targetTemperatureC?: number;
	/** Further fields of every request: receiver, loop, coil, sky, draw, as the service defines them. */
	readonly plant?: Readonly<Partial<WarmUp>>;
}

/** Faults of a list, in words for its author; empty where it can be used. */
export function catalogueFaults(given: unknown): string[] {
	if (typeof given !== "object" || given === null) return ["the list is not an object"];
	const { dishes, tanks, places = [] } = given as Partial<Catalogue>;
	const faults = [
		...items("dishes", dishes, ({ dish }) => typeof dish === "object" && dish !== null, "dish"),
		...items("tanks", tanks, ({ tank }) => typeof tank === "object" && tank !== null, "tank"),
		...items(
			"places",
			places,
			({ latitude, longitude }) => numbers(latitude, longitude),
			"latitude and longitude",
		),
		...items("places", places, ({ elevationM }) => numbers(elevationM), "elevationM"),
		...items(
			"places",
			places,
			({ monthlyAmbientC }) => isYear(monthlyAmbientC),
			"12 pairs in monthlyAmbientC",
		),
	];
	if (dishes?.length === 0) faults.push("dishes is empty");
	if (tanks?.length === 0) faults.push("tanks is empty");
	return faults;
}

const isYear = (given: unknown) =>
	given === undefined ||
	(Array.isArray(given) &&
		given.length === 12 &&
		given.every((pair) => Array.isArray(pair) && pair.length === 2 && numbers(...pair)));

const numbers = (...values: unknown[]) => values.every((value) => Number.isFinite(value));

function items(
	list: string,
	given: unknown,
	whole: (item: Record<string, unknown>) => boolean,
	lacks: string,
): string[] {
	if (!Array.isArray(given)) return [`${list} is not a list`];
	return given.flatMap((item, i) => {
		if (typeof item !== "object" || item === null || typeof item.id !== "string" || !item.name)
			return [`${list}[${i}] lacks id or name`];
		return whole(item) ? [] : [`${list}[${i}] (${item.id}) lacks ${lacks}`];
	});
}

/** A name in the visitor's language, else in English, else in any language. */
export function nameIn(name: Name, language: string): string {
	return typeof name === "string" ? name : (name[language] ?? name.en ?? Object.values(name)[0] ?? "");
}
