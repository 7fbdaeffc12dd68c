import { createRaykettle, RaykettleProblem } from "../../sdk/index.ts";
import { readings } from "../../sdk/widget/numeral.ts";

/** The demo page's own few lines: the calculator's language, live calls through the SDK, and a key for them where the deployment needs one. */
let raykettle = createRaykettle({ baseUrl: location.origin });
const HOSTEL = { latitude: 31.2, longitude: -7.9, elevationM: 2350 };

interface Asked {
	readonly address: string;
	readonly words: string;
}

const QUESTIONS: Readonly<Record<string, (form: FormData) => Promise<Asked>>> = {
	async boiling(form) {
		const elevationM = numberIn(String(form.get("elevationM")));
		const { boilingPointC, pressureKpa } = await raykettle.boilingPoint({ elevationM });
		return {
			address: `/v1/boiling-point?elevationM=${elevationM}`,
			words: `At ${boilingPointC.toFixed(1)} °C, under ${pressureKpa.toFixed(1)} kPa of air.`,
		};
	},
	async sun() {
		const time = new Date().toISOString().slice(0, 19) + "Z";
		const { positions } = await raykettle.sunPosition({ ...HOSTEL, time: [time] });
		const { apparentAltitudeDeg: altitude, azimuthDeg: azimuth } = positions[0]!;
		return {
			address: `/v1/sun/position?latitude=31.2&longitude=-7.9&elevationM=2350&time=${time}`,
			words:
				altitude > 0
					? `${altitude.toFixed(1)}° above the horizon, ${azimuth.toFixed(0)}° clockwise from north.`
					: `It is night there: ${Math.abs(altitude).toFixed(1)}° below the horizon.`,
		};
	},
	async limits() {
		const { service, contract, limits } = await raykettle.meta();
		return {
			address: "/v1/meta",
			words: `Service ${service}, contract ${contract}, ${limits.length} limits: ${limits[0]!.meaning} up to ${limits[0]!.value.toLocaleString("en")} ${limits[0]!.unit}, and more.`,
		};
	},
};

function numberIn(typed: string): number {
	const [value, other] = readings(typed);
	if (value === undefined) throw new RangeError(`${typed} is not a number.`);
	if (other !== undefined)
		throw new RangeError(
			`${typed} can mean ${value} or ${other}: leave out the thousands separator, or write fewer decimals.`,
		);
	return value;
}

/** What went wrong, in words for whoever asked. */
const wordsOf = (error: unknown) =>
	error instanceof RaykettleProblem || error instanceof RangeError
		? error.message
		: "The service could not be reached.";

for (const form of document.querySelectorAll<HTMLFormElement>("form[data-ask]")) {
	const [output, code] = [form.querySelector("output")!, form.querySelector("code")!];
	const question = QUESTIONS[form.dataset.ask ?? ""];
	form.addEventListener("input", () => {
		output.textContent = code.textContent = ""; // they belong to what was asked before
	});
	form.addEventListener("submit", async (event) => {
		event.preventDefault();
		output.textContent = "…";
		try {
			const { address, words } = await question!(new FormData(form));
			output.textContent = words;
			code.textContent = `GET ${address}`;
		} catch (error) {
			output.textContent = wordsOf(error);
			code.textContent = "";
		}
	});
}

const sizer = document.querySelector("raykettle-sizer");
const languages = document.querySelectorAll<HTMLButtonElement>("button[data-lang]");
for (const button of languages)
	button.addEventListener("click", () => {
		sizer?.setAttribute("lang", button.dataset.lang ?? "en");
		for (const other of languages) other.setAttribute("aria-pressed", String(other === button));
	});

/** Asks for a key where the service answers no one without. It is held by this page alone, so that it ends with the visit. */
const keyForm = document.querySelector<HTMLFormElement>("#key")!;
const said = keyForm.querySelector("output")!;
raykettle.meta().catch((error: unknown) => {
	keyForm.hidden = !(error instanceof RaykettleProblem && error.status === 401);
});
keyForm.addEventListener("submit", async (event) => {
	event.preventDefault();
	const apiKey = String(new FormData(keyForm).get("key")).trim();
	if (apiKey.startsWith("rk_secret_")) {
		keyForm.reset();
		said.textContent = "That is a secret key, for servers alone; it was not sent. Enter a publishable one.";
		return;
	}
	said.textContent = "…";
	const keyed = createRaykettle({ baseUrl: location.origin, apiKey });
	try {
		await keyed.meta();
		raykettle = keyed;
		sizer?.setAttribute("api-key", apiKey);
		said.textContent = "The key works here.";
	} catch (error) {
		said.textContent = wordsOf(error);
	}
});

for (const place of document.querySelectorAll(".origin")) place.textContent = location.origin;
