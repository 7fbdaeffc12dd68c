import { air, assumptions, cautions, chart } from "./answer.ts";
import { element } from "./dom.ts";
import { isWaiting, notice, type Shown, sentences } from "./shown.ts";
import type { Voice } from "./voice.ts";

/** The part of the widget that shows the answer. */
export interface Panel {
	readonly element: HTMLElement;
	readonly state: () => Shown;
	readonly show: (state: Shown) => void;
	/** Shows a notice in place of the words until the next state. */
	readonly say: (text: string) => void;
	/** Scrolls its words into view: on a phone they are below a long form. */
	readonly reveal: () => void;
	/** Stops following its own width. */
	readonly rest: () => void;
}

/** Words that screen readers announce, and below them chart, safety notes and assumptions.
 *  @param changed  receives each new state
 *  @param again    sends the request again */
export function panel(voice: () => Voice, changed: (state: Shown) => void, again: () => void): Panel {
	const said = element("div", { class: "said", role: "status" });
	const shown = element("div", { class: "shown" });
	let state: Shown = { kind: "empty" };
	let figure = element("figure");

	const draw = () => {
		const width = Math.round(figure.clientWidth);
		if (state.kind !== "answer" || !width || figure.firstElementChild?.getAttribute("width") === `${width}`)
			return;
		figure.replaceChildren(chart(state.answered, voice(), width));
	};
	const resized = new ResizeObserver(draw);

	function show(next: Shown): void {
		state = next;
		changed(state);
		const speaking = voice();
		said.replaceChildren(...sentences(state, speaking, again));
		resized.disconnect();
		if (isWaiting(state)) {
			shown.classList.add("stale"); // an earlier answer stays, so that the page keeps its height
			return;
		}
		shown.replaceChildren();
		if (state.kind !== "answer") return;
		shown.classList.toggle("stale", state.stale);
		figure = element("figure");
		shown.append(
			figure,
			cautions(state.answered, speaking),
			element("p", { class: "hint" }, `${speaking.texts.disclaimer} ${air(state.answered, speaking)}`),
			assumptions(state.answered, speaking),
		);
		draw();
		resized.observe(figure);
	}

	return {
		element: element("div", { class: "told" }, said, shown),
		state: () => state,
		show,
		say: (text) => said.replaceChildren(notice(text)),
		reveal: () => said.scrollIntoView({ block: "nearest" }),
		rest: () => resized.disconnect(),
	};
}
