import { languageFor } from "../texts/languages.ts";
import { ask, type Outcome } from "./ask.ts";
import { type Catalogue, catalogueFaults } from "./catalogue.ts";
import { type Choice, type Field, firstChoice, keptChoice, openFields, request } from "./choice.ts";
import { element } from "./dom.ts";
import { type Entries, form, type Listeners } from "./form.ts";
import { locate } from "./locate.ts";
import { panel } from "./panel.ts";
import { isWaiting } from "./shown.ts";
import css from "./sizer.css";
import { type Voice, voice } from "./voice.ts";

const SLOW = 3000; // [ms] after which the widget says that it takes longer
const SERVICE = new URL(import.meta.url).origin; // where the script came from

/** `<raykettle-sizer>`: asks a visitor for place, dish, tank and need, and shows when the water is hot. */
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
	#wanted: string | null = null; // address of the list being fetched
	#choice: Choice | undefined;
	#changes = 0; // made by the visitor so far
	#faulty: readonly Field[] = [];
	readonly #typed: Entries["typed"] = {};
	#running: AbortController | undefined;
	#connected = false;
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
				this.#changed();
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
		if (Object.hasOwn(this, "catalogue")) {
			const { catalogue } = this; // set before the script ran, so it hides the property of that name
			Reflect.deleteProperty(this, "catalogue");
			this.#take(catalogue);
		}
		this.#connected = true;
		const inside = this.querySelector('script[type="application/json"]')?.textContent;
		if (this.#catalogue) this.#render();
		else if (inside) this.#read(() => JSON.parse(inside));
		else if (this.hasAttribute("catalogue")) void this.#load();
		else queueMicrotask(() => this.#catalogue ?? this.#take(undefined)); // a script may set the property next
	}

	disconnectedCallback(): void {
		this.#connected = false;
		this.#running?.abort();
		if (isWaiting(this.#panel.state())) this.#panel.show({ kind: "empty" });
		this.#panel.rest();
	}

	attributeChangedCallback(name: string): void {
		if (!this.#connected) return; // for an element older than the script, attributes are reported before it is connected
		if (name === "catalogue") void this.#load();
		else this.#render();
	}

	/** The supplier's list of dishes, tanks and places. */
	get catalogue(): Catalogue | undefined {
		return this.#catalogue;
	}

	set catalogue(given: Catalogue) {
		this.#take(given);
	}

	/** A copy of the visitor's current choice. */
	get choice(): Readonly<Choice> | undefined {
		return this.#choice && { ...this.#choice };
	}

	/** Fetches the list unless that is already in progress; a list that was replaced in the meantime is dropped. */
	async #load(): Promise<void> {
		const url = this.getAttribute("catalogue");
		if (!url || url === this.#wanted) return;
		this.#wanted = url;
		let parse = (): unknown => {
			throw new Error(`${url} cannot be loaded`);
		};
		try {
			const response = await fetch(new URL(url, document.baseURI));
			const text = await response.text();
			parse = () => JSON.parse(text);
		} catch {
			// `parse` throws
		}
		if (this.#wanted === url) this.#read(parse);
	}

	#read(parse: () => unknown): void {
		try {
			this.#take(parse());
		} catch (error) {
			this.#wanted = null;
			this.#panel.show({ kind: "faulty", faults: [String((error as Error).message)] });
		}
	}

	#take(given: unknown): void {
		this.#wanted = null;
		const faults = catalogueFaults(given);
		if (faults.length > 0) {
			this.#panel.show({ kind: "faulty", faults });
			return;
		}
		this.#catalogue = given as Catalogue;
		this.#choice =
			this.#choice && this.#changes > 0
				? keptChoice(this.#choice, this.#catalogue)
				: firstChoice(this.#catalogue);
		const state = this.#panel.state();
		if (state.kind === "answer") this.#panel.show({ ...state, stale: true });
		else if (!isWaiting(state)) this.#panel.show({ kind: "empty" });
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
				form(
					this.#choice,
					this.#catalogue,
					speaking,
					{ typed: this.#typed, faulty: this.#faulty },
					this.#listeners,
				),
			);
		if (focus !== undefined) this.#focus(focus);
		this.#panel.show(state);
	}

	#focus(id: string): void {
		this.shadowRoot?.getElementById(id)?.focus();
	}

	#changed(): void {
		this.#changes++;
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
		const changes = this.#changes;
		const body = request(asked, catalogue, new Date().getFullYear());
		const baseUrl = this.getAttribute("service") ?? SERVICE;
		const apiKey = this.getAttribute("api-key");
		try {
			const outcome = await ask({ baseUrl, ...(apiKey !== null && { apiKey }) }, body, running.signal);
			const stale = changes !== this.#changes || catalogue !== this.#catalogue;
			this.#showOutcome(outcome, { choice: asked, catalogue, body }, stale);
		} catch {
			// a newer request replaced it
		} finally {
			clearTimeout(slow);
		}
	}

	#showOutcome(
		outcome: Outcome,
		{ choice, catalogue, body }: { choice: Choice; catalogue: Catalogue; body: object },
		stale: boolean,
	): void {
		if (outcome.kind === "answer") {
			const { answer } = outcome;
			this.#panel.show({ kind: "answer", answered: { answer, choice, catalogue }, stale });
			this.#send("raykettle-answer", { request: body, answer });
		} else {
			const { trouble, problem } = outcome;
			this.#panel.show(outcome);
			this.#send("raykettle-trouble", { request: body, trouble, problem });
		}
		this.#panel.reveal();
	}

	#send(name: string, detail: object): void {
		this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
	}
}
