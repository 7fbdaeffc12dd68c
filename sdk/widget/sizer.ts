import type { RaykettleProblem } from "../problem.ts";
import { type Answered, assumptions, cautions, chart, words } from "./answer.ts";
import { ask, type Outcome, type Trouble } from "./ask.ts";
import { type Catalogue, catalogueFaults } from "./catalogue.ts";
import { type Choice, darkestMonth, type Field, openFields, request } from "./choice.ts";
import { element } from "./dom.ts";
import { form } from "./form.ts";
import css from "./sizer.css";
import { languageFor } from "./texts/texts.ts";
import { type Units, type Voice, voice } from "./voice.ts";

const SLOW = 3000; // [ms] after which a visitor is told that it takes longer
const SERVICE = new URL(import.meta.url).origin; // where the script came from

type Shown =
	| { readonly kind: "empty" | "loading" | "slow" | "fill" }
	| { readonly kind: "answer"; readonly answered: Answered; readonly stale: boolean }
	| { readonly kind: "trouble"; readonly trouble: Trouble; readonly problem: RaykettleProblem | undefined }
	| { readonly kind: "faulty"; readonly faults: readonly string[] };

/** `<raykettle-sizer>`: asks a visitor for place, dish, tank and need, and says when the water is hot. */
export class RaykettleSizer extends HTMLElement {
	static readonly observedAttributes = ["lang", "units", "catalogue", "service"];
	readonly #said = element("div", { class: "said", role: "status" });
	readonly #shown = element("div", { class: "shown" });
	readonly #asked = element("div", { class: "asked" });
	readonly #frame = element(
		"div",
		{ class: "frame" },
		this.#asked,
		element("div", { class: "told" }, this.#said, this.#shown),
	);
	readonly #resized = new ResizeObserver(() => this.#draw());
	#catalogue: Catalogue | undefined;
	#choice: Choice | undefined;
	#faulty: readonly Field[] = [];
	#state: Shown = { kind: "empty" };
	#running: AbortController | undefined;
	#figure: HTMLElement | undefined;

	constructor() {
		super();
		const sheet = new CSSStyleSheet();
		sheet.replaceSync(css);
		const shadow = this.attachShadow({ mode: "open" });
		shadow.adoptedStyleSheets = [sheet];
		shadow.append(this.#frame);
	}

	connectedCallback(): void {
		const inside = this.querySelector('script[type="application/json"]')?.textContent;
		if (this.#catalogue) this.#render();
		else if (inside) this.#read(() => JSON.parse(inside));
		else if (this.hasAttribute("catalogue")) void this.#load();
		else queueMicrotask(() => this.#catalogue ?? this.#take(undefined)); // a script may set the property next
	}

	disconnectedCallback(): void {
		this.#running?.abort();
		this.#resized.disconnect();
	}

	attributeChangedCallback(name: string): void {
		if (!this.isConnected) return;
		if (name === "catalogue") void this.#load();
		else this.#render();
	}

	/** What the supplier sells, and where. */
	get catalogue(): Catalogue | undefined {
		return this.#catalogue;
	}

	set catalogue(given: Catalogue) {
		this.#take(given);
	}

	/** The visitor's choice as it stands; a copy. */
	get choice(): Readonly<Choice> | undefined {
		return this.#choice && { ...this.#choice };
	}

	async #load(): Promise<void> {
		const url = this.getAttribute("catalogue");
		if (!url) return;
		try {
			const response = await fetch(new URL(url, document.baseURI));
			const text = await response.text();
			this.#read(() => JSON.parse(text));
		} catch {
			this.#show({ kind: "faulty", faults: [`${url} can't be loaded`] });
		}
	}

	#read(parse: () => unknown): void {
		try {
			this.#take(parse());
		} catch (error) {
			this.#show({ kind: "faulty", faults: [String((error as Error).message)] });
		}
	}

	#take(given: unknown): void {
		const faults = catalogueFaults(given);
		if (faults.length > 0) {
			this.#show({ kind: "faulty", faults });
			return;
		}
		const catalogue = given as Catalogue;
		const [place] = catalogue.places ?? [];
		this.#catalogue = catalogue;
		this.#choice = {
			...{ latitude: undefined, longitude: undefined, elevationM: undefined, litres: undefined },
			placeId: place?.id ?? "",
			dishId: catalogue.dishes[0]!.id,
			tankId: catalogue.tanks[0]!.id,
			month: darkestMonth(place?.latitude),
			need: "people",
			people: 4,
		};
		this.#state = { kind: "empty" };
		if (this.isConnected) this.#render();
	}

	get #voice(): Voice {
		const wish = this.closest("[lang]")?.getAttribute("lang") || navigator.language;
		return voice(languageFor(wish), this.getAttribute("units") === "us" ? "us" : "metric");
	}

	#render(focus?: string): void {
		const speaking = this.#voice;
		this.#frame.lang = speaking.language;
		this.#frame.dir = speaking.language === "ar" ? "rtl" : "ltr";
		if (this.#catalogue && this.#choice) {
			const made = form(this.#choice, this.#catalogue, speaking, this.#faulty, {
				changed: () => this.#changed(),
				rebuild: (id) => {
					this.#faulty = [];
					this.#changed();
					this.#render(id);
				},
				ask: () => void this.#ask(),
				units: (units: Units) => {
					this.setAttribute("units", units);
					this.#focus(`units-${units}`);
				},
				locate: () => this.#locate(),
			});
			this.#asked.replaceChildren(element("h2", {}, speaking.texts.title), made);
		}
		if (focus !== undefined) this.#focus(focus);
		this.#show(this.#state);
	}

	#focus(id: string): void {
		this.shadowRoot?.getElementById(id)?.focus();
	}

	#changed(): void {
		if (this.#state.kind === "answer" && !this.#state.stale) this.#show({ ...this.#state, stale: true });
	}

	#show(state: Shown): void {
		this.#state = state;
		const speaking = this.#voice;
		const busy = state.kind === "loading" || state.kind === "slow";
		this.#frame.dataset.state = state.kind;
		this.#frame.setAttribute("aria-busy", String(busy));
		this.#said.replaceChildren(...this.#sentences(state, speaking));
		this.#figure = undefined;
		this.#resized.disconnect();
		if (state.kind !== "answer") {
			this.#shown.replaceChildren();
			return;
		}
		this.#shown.classList.toggle("stale", state.stale);
		this.#figure = element("figure");
		this.#shown.replaceChildren(
			this.#figure,
			cautions(state.answered, speaking),
			element("p", { class: "hint" }, speaking.texts.disclaimer),
			assumptions(state.answered, speaking),
		);
		this.#draw();
		this.#resized.observe(this.#figure);
	}

	#sentences(state: Shown, speaking: Voice): HTMLElement[] {
		const { texts, say } = speaking;
		const headline = (text: string) => element("p", { class: "headline" }, text);
		const sentence = (text: string) => element("p", {}, text);
		if (state.kind === "answer") {
			const [first, ...rest] = words(state.answered, speaking);
			return [
				...(state.stale ? [element("p", { class: "notice" }, texts.stale)] : []),
				headline(first),
				...rest.map(sentence),
			];
		}
		if (state.kind === "faulty")
			return [
				headline(texts.faultyList),
				...state.faults.map((fault) => element("p", { lang: "en", dir: "ltr" }, fault)),
			];
		if (state.kind === "trouble")
			return [
				headline(say(texts[state.trouble], waiting(state.problem))),
				...this.#details(state.problem, texts),
			];
		if (state.kind === "fill") return [sentence(texts.fillFirst)];
		return [sentence(texts[state.kind])];
	}

	#details(problem: RaykettleProblem | undefined, texts: Voice["texts"]): HTMLElement[] {
		const again = element(
			"button",
			{ type: "button", class: "plain", onclick: () => void this.#ask() },
			texts.again,
		);
		if (!problem) return [again];
		const faults = problem.errors.length > 0 ? problem.errors.map(({ detail }) => detail) : [problem.message];
		const quote = problem.requestId ? texts.quote.replace("{id}", problem.requestId) : "";
		return [
			...(problem.status < 500 && problem.status !== 429
				? faults.map((fault) => element("p", { lang: "en", dir: "ltr" }, fault))
				: []),
			element("p", { class: "hint" }, quote),
			again,
		];
	}

	#draw(): void {
		if (this.#state.kind !== "answer" || !this.#figure) return;
		const width = Math.round(this.#figure.clientWidth);
		if (width === 0 || this.#figure.firstElementChild?.getAttribute("width") === String(width)) return;
		this.#figure.replaceChildren(chart(this.#state.answered, this.#voice, width));
	}

	async #ask(): Promise<void> {
		const [catalogue, choice] = [this.#catalogue, this.#choice];
		if (!catalogue || !choice) return;
		this.#faulty = openFields(choice);
		if (this.#faulty.length > 0) {
			this.#state = { kind: "fill" };
			this.#render(this.#faulty[0]);
			return;
		}
		this.#running?.abort();
		const running = new AbortController();
		this.#running = running;
		if (this.shadowRoot?.querySelector("[aria-invalid]")) this.#render("ask");
		this.#show({ kind: "loading" });
		const slow = setTimeout(() => this.#show({ kind: "slow" }), SLOW);
		const asked = { ...choice };
		const body = request(asked, catalogue, new Date().getFullYear());
		const apiKey = this.getAttribute("api-key");
		try {
			const outcome = await ask(
				{
					baseUrl: this.getAttribute("service") ?? SERVICE,
					...(apiKey !== null && { apiKey }),
				},
				body,
				running.signal,
			);
			this.#tellOutcome(outcome, { choice: asked, catalogue, body });
		} catch {
			// a newer question took its place
		} finally {
			clearTimeout(slow);
		}
	}

	#tellOutcome(
		outcome: Outcome,
		{ choice, catalogue, body }: { choice: Choice; catalogue: Catalogue; body: object },
	): void {
		if (outcome.kind === "answer") {
			this.#show({ kind: "answer", answered: { answer: outcome.answer, choice, catalogue }, stale: false });
			this.#tell("raykettle-answer", { request: body, answer: outcome.answer });
		} else {
			this.#show(outcome);
			this.#tell("raykettle-trouble", { request: body, trouble: outcome.trouble, problem: outcome.problem });
		}
	}

	#tell(name: string, detail: object): void {
		this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
	}

	#locate(): void {
		const { texts } = this.#voice;
		const say = (text: string) => this.#said.replaceChildren(element("p", { class: "notice" }, text));
		say(texts.locating);
		const found = ({ coords }: GeolocationPosition) => {
			const choice = this.#choice;
			if (!choice) return;
			const { latitude, longitude, altitude } = coords;
			choice.latitude = Number(latitude.toFixed(2)); // a kilometre is near enough, and tells less of the visitor
			choice.longitude = Number(longitude.toFixed(2));
			choice.elevationM = altitude === null ? undefined : Math.round(altitude);
			choice.month = darkestMonth(latitude);
			this.#render("elevationM");
			say(altitude === null ? texts.noElevation : texts.roughElevation);
		};
		if (!navigator.geolocation) say(texts.noLocation);
		else navigator.geolocation.getCurrentPosition(found, () => say(texts.noLocation), { timeout: 10_000 });
	}
}

/** How long to stay away, where the service says so. */
const waiting = (problem: RaykettleProblem | undefined) => ({
	waitMin: Math.ceil((problem?.retryAfterS ?? 60) / 60),
});
