import type { RaykettleProblem } from "../problem.ts";
import { type Answered, words } from "./answer.ts";
import type { Trouble } from "./ask.ts";
import { element } from "./dom.ts";
import type { Voice } from "./voice.ts";

/** What the answer area shows. */
export type Shown =
	| { readonly kind: "empty" | "loading" | "slow" | "fill" }
	| { readonly kind: "answer"; readonly answered: Answered; readonly stale: boolean }
	| { readonly kind: "trouble"; readonly trouble: Trouble; readonly problem: RaykettleProblem | undefined }
	| { readonly kind: "faulty"; readonly faults: readonly string[] };

export const isWaiting = ({ kind }: Shown) => kind === "loading" || kind === "slow";

const headline = (text: string) => element("p", { class: "headline" }, text);
const sentence = (text: string) => element("p", {}, text);
export const notice = (text: string) => element("p", { class: "notice" }, text);
const english = (text: string) => element("p", { lang: "en", dir: "ltr" }, text);

/** A state in words, the headline first.
 *  @param again  sends the request again */
export function sentences(state: Shown, voice: Voice, again: () => void): HTMLElement[] {
	const { texts, say } = voice;
	if (state.kind === "answer") {
		const [first, ...rest] = words(state.answered, voice);
		return [...(state.stale ? [notice(texts.stale)] : []), headline(first), ...rest.map(sentence)];
	}
	if (state.kind === "faulty") return [headline(texts.faultyList), ...state.faults.map(english)];
	if (state.kind === "trouble")
		return [
			headline(say(texts[state.trouble], waiting(state.problem))),
			...details(state.problem, voice),
			element("button", { type: "button", class: "plain", onclick: again }, texts.again),
		];
	return [sentence(state.kind === "fill" ? texts.fillFirst : texts[state.kind])];
}

/** What the visitor can fix or quote. */
function details(problem: RaykettleProblem | undefined, { texts, say }: Voice): HTMLElement[] {
	if (!problem) return [];
	const { status, errors, message, requestId } = problem;
	const faults = errors.length > 0 ? errors.map(({ detail }) => detail) : [message];
	return [
		...(status < 500 && status !== 429 ? faults.map(english) : []),
		element("p", { class: "hint" }, requestId ? say(texts.quote, { id: requestId }) : ""),
	];
}

/** How long to wait, where the service states it. */
const waiting = (problem: RaykettleProblem | undefined) => ({
	waitMin: Math.ceil((problem?.retryAfterS ?? 60) / 60),
});
