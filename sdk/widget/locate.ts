import { type Choice, darkestMonth } from "./choice.ts";
import type { Texts } from "./texts/words.ts";

type Place = Pick<Choice, "latitude" | "longitude" | "elevationM" | "month">;

const PATIENCE = 10_000; // [ms]

/** Asks the browser where the visitor is, as near as is needed, and says how it goes.
 *  @param found  hears of the place before the visitor is told what is rough about it */
export function locate(texts: Texts, say: (text: string) => void, found: (place: Place) => void): void {
	const none = () => say(texts.noLocation);
	const here = ({ coords: { latitude, longitude, altitude } }: GeolocationPosition) => {
		found({
			latitude: Number(latitude.toFixed(2)), // a kilometre is near enough, and tells less of the visitor
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
