import type { Body } from "../method.ts";

type WarmUp = Body<"warmUpTank">;
/** A name in one language for all, or by language. */
export type Name = string | Readonly<Record<string, string>>;

interface Item {
	readonly id: string;
	readonly name: Name;
}

/** A dish as sold, and what comes with it. Its fields are those of the service. */
export interface DishItem extends Item {
	readonly dish: WarmUp["dish"];
	readonly receiver?: WarmUp["receiver"];
	readonly loop?: WarmUp["loop"];
}

/** A tank as sold, and the coil in it. */
export interface TankItem extends Item {
	readonly tank: WarmUp["tank"];
	readonly coil?: WarmUp["coil"];
}

/** A place that visitors may pick. Its elevation is required: 0 m for want of one ruins sky and boiling point. */
export interface PlaceItem extends Item {
	readonly latitude: number;
	readonly longitude: number;
	readonly elevationM: number;
	/** The same in every month: leave the air out of it, and give that by month. */
	readonly sky?: WarmUp["sky"];
	/** Air on a clear day of each month, from January: lowest and highest. The service assumes it where there is none. */
	readonly monthlyAmbientC?: readonly (readonly [lowest: number, highest: number])[];
}

/** What a supplier sells, and where. */
export interface Catalogue {
	readonly dishes: readonly DishItem[];
	readonly tanks: readonly TankItem[];
	readonly places?: readonly PlaceItem[];
	/** Water at 40 °C that one person is counted with in a day; 35 L unless given. The page states it. */
	readonly litresPerPerson?: number;
	/** What "hot" means; 60 °C unless given. */
	readonly targetTemperatureC?: number;
	/** What else every request says: receiver, loop, coil, sky, draw, as the service takes them. */
	readonly plant?: Readonly<Partial<WarmUp>>;
}

/** What keeps a list from being used, in words for whoever wrote it; empty when nothing does. */
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

/** A name in the visitor's language, else in English, else in any. */
export function nameIn(name: Name, language: string): string {
	return typeof name === "string" ? name : (name[language] ?? name.en ?? Object.values(name)[0] ?? "");
}
