import { createRaykettle, RaykettleProblem } from "../../sdk/index.ts";
import { readings } from "../../sdk/widget/numeral.ts";

/** The script of the demo page: the calculator's language, live calls through the SDK, and a key where the deployment needs one. */
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
			words: `Water boils at ${boilingPointC.toFixed(1)} °C; the air pressure is ${pressureKpa.toFixed(1)} kPa.`,
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
					? `The sun is ${altitude.toFixed(1)}° above the horizon, ${azimuth.toFixed(0)}° clockwise from north.`
					: `It is night there. The sun is ${Math.abs(altitude).toFixed(1)}° below the horizon.`,
		};
	},
	async limits() {
		const { service, contract, limits } = await raykettle.meta();
		return {
			address: "/v1/meta",
			words: `Service ${service}, contract ${contract}, ${limits.length} limits. The first is ${limits[0]!.meaning}: ${limits[0]!.value.toLocaleString("en")} ${limits[0]!.unit}.`,
		};
	},
};

function numberIn(typed: string): number {
	const [value, other] = readings(typed);
	if (value === undefined) throw new RangeError(`${typed} is not a number.`);
	if (other !== undefined)
		throw new RangeError(
			`${typed} can mean ${value} or ${other}. Remove the thousands separator or enter fewer decimals.`,
		);
	return value;
}

/** The error in words for the visitor. */
const wordsOf = (error: unknown) =>
	error instanceof RaykettleProblem || error instanceof RangeError
		? error.message
		: "The service could not be reached.";

for (const form of document.querySelectorAll<HTMLFormElement>("form[data-ask]")) {
	const [output, code] = [form.querySelector("output")!, form.querySelector("code")!];
	const question = QUESTIONS[form.dataset.ask ?? ""];
	form.addEventListener("input", () => {
		output.textContent = code.textContent = ""; // they belong to the earlier query
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

/** Shows the form for a key where the service needs one. Only this page holds the key, so it ends with the visit. */
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
		said.textContent =
			"That is a secret key, which belongs on servers. It was not sent. Enter a publishable key.";
		return;
	}
	said.textContent = "…";
	const keyed = createRaykettle({ baseUrl: location.origin, apiKey });
	try {
		await keyed.meta();
		raykettle = keyed;
		sizer?.setAttribute("api-key", apiKey);
		said.textContent = "The key is valid here.";
	} catch (error) {
		said.textContent = wordsOf(error);
	}
});

for (const place of document.querySelectorAll(".origin")) place.textContent = location.origin;
