import type { Body } from "../method.ts";
import type { Catalogue } from "./catalogue.ts";

/** What the visitor has chosen so far. Numbers stand in the service's units, whatever the page shows. */
export interface Choice {
	placeId: string; // of the supplier's list, or "" for a place of the visitor's own
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

/** Water at 40 °C that is asked for [L]. */
export function litresNeeded({ need, people, litres }: Choice, catalogue: Catalogue): number {
	return need === "people" ? (people ?? 0) * litresPerPerson(catalogue) : (litres ?? 0);
}

/** The month with the least sun at a latitude. */
export const darkestMonth = (latitude: number | undefined) => ((latitude ?? 0) < 0 ? 7 : 1);

/** What stands in the form at first: the foremost of each list, four people, and the darkest month there. */
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

/** What the visitor has chosen, under another list: all of it but what that list lacks. */
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

/** Least and most that a field takes, in the service's units. */
export const BOUNDS: Readonly<Record<Field, readonly [least: number, most: number]>> = {
	latitude: [-90, 90],
	longitude: [-180, 180],
	elevationM: [-430, 6000],
	people: [1, 1000],
	litres: [10, 50_000],
};

/** The fields that must be filled in before the service can be asked, and are not or lie out of bounds. */
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

/** Sky and air as the list has them; what it lacks, the service assumes. */
function skyOf({ placeId, month }: Choice, { plant, places = [] }: Catalogue): Body<"warmUpTank">["sky"] {
	const place = places.find(({ id }) => id === placeId);
	const sky = place?.sky ?? plant?.sky;
	const [ambientMinC, ambientMaxC] = place?.monthlyAmbientC?.[month - 1] ?? [];
	if (ambientMinC === undefined || ambientMaxC === undefined || sky?.kind === "measured") return sky;
	return { ...sky, ambientMinC, ambientMaxC };
}

/** What the service is asked. The day is the fifteenth of the month, of the year in which the page is read. */
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
