import type { Page } from "../texts/dictionary.ts";
import { type Choice, darkestMonth } from "./choice.ts";

type Place = Pick<Choice, "latitude" | "longitude" | "elevationM" | "month">;

const PATIENCE = 10_000; // [ms]

/** Asks the browser for the visitor's location, to a kilometre, and reports progress.
 *  @param found  receives the place before the visitor reads how accurate it is */
export function locate(texts: Page, say: (text: string) => void, found: (place: Place) => void): void {
	const none = () => say(texts.noLocation);
	const here = ({ coords: { latitude, longitude, altitude } }: GeolocationPosition) => {
		found({
			latitude: Number(latitude.toFixed(2)), // a kilometre is accurate enough, and more private
			longitude: Number(longitude.toFixed(2)),
			elevationM: altitude === null ? undefined : Math.round(altitude),
			month: darkestMonth(latitude),
		});
		say(altitude === null ? texts.noElevation : texts.roughElevation);
	};
	say(texts.locating);
	if (navigator.geolocation) navigator.geolocation.getCurrentPosition(here, none, { timeout: PATIENCE });
	else none();
}
