import type { RaykettleProblem } from "../problem.ts";
import { type Answered, words } from "./answer.ts";
import type { Trouble } from "./ask.ts";
import { element } from "./dom.ts";
import type { Voice } from "./voice.ts";

/** What stands where the answer goes. */
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

/** It in words, the headline first.
 *  @param again  asks once more */
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
			...details(state.problem, texts),
			element("button", { type: "button", class: "plain", onclick: again }, texts.again),
		];
	return [sentence(state.kind === "fill" ? texts.fillFirst : texts[state.kind])];
}

/** What the visitor can mend or quote. */
function details(problem: RaykettleProblem | undefined, { quote }: Voice["texts"]): HTMLElement[] {
	if (!problem) return [];
	const { status, errors, message, requestId } = problem;
	const faults = errors.length > 0 ? errors.map(({ detail }) => detail) : [message];
	return [
		...(status < 500 && status !== 429 ? faults.map(english) : []),
		element("p", { class: "hint" }, requestId ? quote.replace("{id}", requestId) : ""),
	];
}

/** How long to stay away, where the service says so. */
const waiting = (problem: RaykettleProblem | undefined) => ({
	waitMin: Math.ceil((problem?.retryAfterS ?? 60) / 60),
});
