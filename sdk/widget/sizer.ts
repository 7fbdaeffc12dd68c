import { ask, type Outcome } from "./ask.ts";
import { type Catalogue, catalogueFaults } from "./catalogue.ts";
import { type Choice, type Field, firstChoice, openFields, request } from "./choice.ts";
import { element } from "./dom.ts";
import { form, type Listeners } from "./form.ts";
import { locate } from "./locate.ts";
import { panel } from "./panel.ts";
import { isWaiting } from "./shown.ts";
import css from "./sizer.css";
import { languageFor } from "./texts/texts.ts";
import { type Voice, voice } from "./voice.ts";

const SLOW = 3000; // [ms] after which a visitor is told that it takes longer
const SERVICE = new URL(import.meta.url).origin; // where the script came from

/** `<raykettle-sizer>`: asks a visitor for place, dish, tank and need, and says when the water is hot. */
export class RaykettleSizer extends HTMLElement {
	static readonly observedAttributes = ["lang", "units", "catalogue", "service"];
	readonly #asked = element("div", { class: "asked" });
	readonly #frame = element("div", { class: "frame" }, this.#asked);
	readonly #panel = panel(
		() => this.#voice,
		(shown) => {
			this.#frame.dataset.state = shown.kind;
			this.#frame.setAttribute("aria-busy", String(isWaiting(shown)));
		},
		() => {
			this.#focus("ask"); // as the button that was pressed goes away
			void this.#ask();
		},
	);
	#catalogue: Catalogue | undefined;
	#choice: Choice | undefined;
	#faulty: readonly Field[] = [];
	#running: AbortController | undefined;
	readonly #listeners: Listeners = {
		changed: () => this.#changed(),
		rebuild: (id) => {
			this.#faulty = [];
			this.#changed();
			this.#render(id);
		},
		ask: () => void this.#ask(),
		units: (units) => {
			this.setAttribute("units", units);
			this.#focus(`units-${units}`);
		},
		locate: () =>
			locate(this.#voice.texts, this.#panel.say, (place) => {
				if (this.#choice) Object.assign(this.#choice, place);
				this.#render("elevationM");
			}),
	};

	constructor() {
		super();
		const sheet = new CSSStyleSheet();
		sheet.replaceSync(css);
		const shadow = this.attachShadow({ mode: "open" });
		shadow.adoptedStyleSheets = [sheet];
		this.#frame.append(this.#panel.element);
		shadow.append(element("div", { class: "box" }, this.#frame));
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
		this.#panel.rest();
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
			this.#panel.show({ kind: "faulty", faults: [`${url} can't be loaded`] });
		}
	}

	#read(parse: () => unknown): void {
		try {
			this.#take(parse());
		} catch (error) {
			this.#panel.show({ kind: "faulty", faults: [String((error as Error).message)] });
		}
	}

	#take(given: unknown): void {
		const faults = catalogueFaults(given);
		if (faults.length > 0) {
			this.#panel.show({ kind: "faulty", faults });
			return;
		}
		this.#catalogue = given as Catalogue;
		this.#choice = firstChoice(this.#catalogue);
		this.#panel.show({ kind: "empty" });
		if (this.isConnected) this.#render();
	}

	get #voice(): Voice {
		const wish = this.closest("[lang]")?.getAttribute("lang") || navigator.language;
		return voice(languageFor(wish), this.getAttribute("units") === "us" ? "us" : "metric");
	}

	#render(focus?: string, state = this.#panel.state()): void {
		const speaking = this.#voice;
		this.#frame.lang = speaking.language;
		this.#frame.dir = speaking.language === "ar" ? "rtl" : "ltr";
		if (this.#catalogue && this.#choice)
			this.#asked.replaceChildren(
				element("h2", {}, speaking.texts.title),
				form(this.#choice, this.#catalogue, speaking, this.#faulty, this.#listeners),
			);
		if (focus !== undefined) this.#focus(focus);
		this.#panel.show(state);
	}

	#focus(id: string): void {
		this.shadowRoot?.getElementById(id)?.focus();
	}

	#changed(): void {
		const state = this.#panel.state();
		if (state.kind === "answer" && !state.stale) this.#panel.show({ ...state, stale: true });
	}

	async #ask(): Promise<void> {
		const [catalogue, choice] = [this.#catalogue, this.#choice];
		if (!catalogue || !choice) return;
		this.#faulty = openFields(choice);
		if (this.#faulty.length > 0) {
			this.#render(this.#faulty[0], { kind: "fill" });
			return;
		}
		this.#running?.abort();
		const running = new AbortController();
		this.#running = running;
		if (this.shadowRoot?.querySelector("[aria-invalid]")) this.#render("ask");
		this.#panel.show({ kind: "loading" });
		this.#panel.reveal();
		const slow = setTimeout(() => this.#panel.show({ kind: "slow" }), SLOW);
		const asked = { ...choice };
		const body = request(asked, catalogue, new Date().getFullYear());
		const baseUrl = this.getAttribute("service") ?? SERVICE;
		const apiKey = this.getAttribute("api-key");
		try {
			const outcome = await ask({ baseUrl, ...(apiKey !== null && { apiKey }) }, body, running.signal);
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
			const { answer } = outcome;
			this.#panel.show({ kind: "answer", answered: { answer, choice, catalogue }, stale: false });
			this.#tell("raykettle-answer", { request: body, answer });
		} else {
			const { trouble, problem } = outcome;
			this.#panel.show(outcome);
			this.#tell("raykettle-trouble", { request: body, trouble, problem });
		}
		this.#panel.reveal();
	}

	#tell(name: string, detail: object): void {
		this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
	}
}
