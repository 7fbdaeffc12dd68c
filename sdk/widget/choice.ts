import type { Body } from "../method.ts";
import type { Catalogue } from "./catalogue.ts";

/** The visitor's choice so far. Numbers are in the service's units, whatever the page shows. */
export interface Choice {
	placeId: string; // id in the supplier's list, or "" for another place
	latitude: number | undefined;
	longitude: number | undefined;
	elevationM: number | undefined;
	dishId: string;
	tankId: string;
	month: number; // 1 to 12
	need: "people" | "litres";
	people: number | undefined;
	litres: number | undefined;
}

export const litresPerPerson = ({ litresPerPerson: litres = 35 }: Catalogue) => litres;
export const target = ({ targetTemperatureC = 60 }: Catalogue) => targetTemperatureC;

/** Water needed at 40 °C [L]. */
export function litresNeeded({ need, people, litres }: Choice, catalogue: Catalogue): number {
	return need === "people" ? (people ?? 0) * litresPerPerson(catalogue) : (litres ?? 0);
}

/** The month with the least sun at a latitude. */
export const darkestMonth = (latitude: number | undefined) => ((latitude ?? 0) < 0 ? 7 : 1);

/** Initial values of the form: the first item of each list, four people, and the darkest month there. */
export function firstChoice({ places: [place] = [], dishes, tanks }: Catalogue): Choice {
	return {
		...{ latitude: undefined, longitude: undefined, elevationM: undefined, litres: undefined },
		placeId: place?.id ?? "",
		dishId: dishes[0]!.id,
		tankId: tanks[0]!.id,
		month: darkestMonth(place?.latitude),
		need: "people",
		people: 4,
	};
}

/** The visitor's choice under another list; what that list lacks is replaced by its first item. */
export function keptChoice(choice: Choice, catalogue: Catalogue): Choice {
	const first = firstChoice(catalogue);
	const has = (items: readonly { id: string }[], sought: string) => items.some(({ id }) => id === sought);
	return {
		...choice,
		...(choice.placeId !== "" && !has(catalogue.places ?? [], choice.placeId) && { placeId: first.placeId }),
		...(!has(catalogue.dishes, choice.dishId) && { dishId: first.dishId }),
		...(!has(catalogue.tanks, choice.tankId) && { tankId: first.tankId }),
	};
}

export type Field = "latitude" | "longitude" | "elevationM" | "people" | "litres";

/** Least and greatest value of a field, in the service's units. */
export const BOUNDS: Readonly<Record<Field, readonly [least: number, most: number]>> = {
	latitude: [-90, 90],
	longitude: [-180, 180],
	elevationM: [-430, 6000],
	people: [1, 1000],
	litres: [10, 50_000],
};

/** The required fields that are empty or out of bounds. */
export function openFields(choice: Choice): Field[] {
	const asked: Field[] = [
		...(choice.placeId === "" ? (["latitude", "longitude", "elevationM"] as const) : []),
		choice.need,
	];
	return asked.filter((field) => {
		const [least, most] = BOUNDS[field];
		const value = choice[field];
		return value === undefined || !(value >= least && value <= most);
	});
}

/** Sky and air from the list; the service assumes what the list omits. */
function skyOf({ placeId, month }: Choice, { plant, places = [] }: Catalogue): Body<"warmUpTank">["sky"] {
	const place = places.find(({ id }) => id === placeId);
	const sky = place?.sky ?? plant?.sky;
	const [ambientMinC, ambientMaxC] = place?.monthlyAmbientC?.[month - 1] ?? [];
	if (ambientMinC === undefined || ambientMaxC === undefined || sky?.kind === "measured") return sky;
	return { ...sky, ambientMinC, ambientMaxC };
}

/** The request to the service. The day is the fifteenth of the month, in the current year. */
export function request(choice: Choice, catalogue: Catalogue, year: number): Body<"warmUpTank"> {
	const { plant = {}, dishes, tanks, places = [] } = catalogue;
	const place = places.find(({ id }) => id === choice.placeId);
	const dish = dishes.find(({ id }) => id === choice.dishId) ?? dishes[0]!;
	const tank = tanks.find(({ id }) => id === choice.tankId) ?? tanks[0]!;
	const { latitude, longitude, elevationM } = place ?? choice;
	const { receiver = plant.receiver, loop = plant.loop } = dish;
	const { coil = plant.coil } = tank;
	const sky = skyOf(choice, catalogue);
	return {
		...plant,
		site: { latitude: latitude!, longitude: longitude!, elevationM: elevationM! },
		date: `${year}-${String(choice.month).padStart(2, "0")}-15`,
		targetTemperatureC: target(catalogue),
		dish: dish.dish,
		tank: tank.tank,
		...(receiver && { receiver }),
		...(loop && { loop }),
		...(coil && { coil }),
		...(sky && { sky }),
	};
}
