import type { Effect } from "../numeric/moments.ts";
import type { Question, UncertainInput, Values } from "./question.ts";

/** Response of the values of a case to each input alone. */
export interface Response {
	readonly central: Values;
	readonly effects: readonly (readonly Effect[])[]; // [input][name of a value], in the order of `names`
	readonly names: readonly string[];
	readonly computed: readonly Values[]; // all computed values, the central case first
	readonly downChannels: readonly string[]; // channels also evaluated one standard deviation down, by the name of their first input
}

/** Channels to evaluate also one standard deviation down: the strongest ones up to a number of cases, or given ones. */
export type Down = { readonly most: number } | { readonly channels: readonly string[] };

/** Inputs that act on the values through one quantity. */
interface Channel<Case> {
	readonly members: readonly { readonly index: number; readonly shift: (score: number) => number }[];
	readonly strongest: UncertainInput<Case>;
	readonly shift: (score: number) => number; // of the quantity by the strongest input
}

/** Evaluates one channel at a time: each a standard deviation up, and some also down, for second-order effects. */
export function response<Case>(question: Question<Case>, down: Down): Response {
	const { stated, central, values } = question;
	const names = Object.keys(central);
	const channels = channelsOf(question);
	const ups = channels.map(({ strongest }) => values(strongest.at(stated, 1)));
	const named = channels.map(({ members }) => question.inputs[members[0]!.index]!.name);
	const chosen =
		"channels" in down
			? channels.flatMap((_, c) => (down.channels.includes(named[c]!) ? [c] : []))
			: strongestFirst(question, central, ups).slice(0, Math.max(0, down.most - 1 - channels.length));
	const downs = new Map(chosen.map((c) => [c, values(channels[c]!.strongest.at(stated, -1))] as const));
	const effects: (readonly Effect[])[] = question.inputs.map(() =>
		names.map(() => ({ first: 0, second: 0 })),
	);
	channels.forEach((channel, c) => {
		for (const { index, shift } of channel.members)
			effects[index] = names.map((name) =>
				effectOf(channel.shift, shift, central[name]!, ups[c]![name]!, downs.get(c)?.[name]),
			);
	});
	const computed = [central, ...ups, ...downs.values()];
	return { central, effects, names, computed, downChannels: chosen.map((c) => named[c]!) };
}

/** Inputs grouped by the quantity through which they act; a group without effect is omitted. */
function channelsOf<Case>({ stated, inputs }: Question<Case>): readonly Channel<Case>[] {
	const groups = new Map<unknown, number[]>();
	inputs.forEach((input, index) => {
		const key = input.through ?? input;
		groups.set(key, [...(groups.get(key) ?? []), index]);
	});
	return [...groups.values()].flatMap((indices) => {
		const members = indices.map((index) => ({ index, shift: shiftBy(stated, inputs[index]!) }));
		const reach = members.map(({ shift }) => Math.abs(shift(1)));
		const most = Math.max(...reach);
		const lead = members[reach.indexOf(most)]!;
		return most === 0 ? [] : [{ members, strongest: inputs[lead.index]!, shift: lead.shift }];
	});
}

/** Change of the quantity through which an input acts, as a function of the score; the score itself where it acts alone. */
function shiftBy<Case>(stated: Case, { at, through }: UncertainInput<Case>): (score: number) => number {
	if (through === undefined) return (score) => score;
	const from = through(stated);
	return (score) => through(at(stated, score)) - from;
}

/** Channels ordered by their greatest share in the variance of any answer. */
function strongestFirst<Case>(
	{ answers }: Question<Case>,
	central: Values,
	ups: readonly Values[],
): number[] {
	const strength = ups.map(() => 0);
	for (const { name } of answers) {
		const effects = ups.map((up) => (up[name]! - central[name]!) ** 2);
		const sum = effects.reduce((total, effect) => total + effect, 0);
		if (!(sum > 0)) continue;
		for (let c = 0; c < ups.length; c++) strength[c] = Math.max(strength[c]!, effects[c]! / sum);
	}
	return ups.map((_, c) => c).sort((a, b) => strength[b]! - strength[a]!);
}

/** Effect of a member's score on a value, from the effect of the channel's strongest input one score up and, if known, one down. */
function effectOf(
	strongest: (score: number) => number,
	member: (score: number) => number,
	central: number,
	up: number,
	down: number | undefined,
): Effect {
	const x = strongest(1);
	const y = strongest(-1);
	const rise = (up - central) / x;
	const curve = down === undefined ? 0 : ((down - central) / y - rise) / (y - x); // divided differences
	const change = (shift: number): number => shift * (rise + curve * (shift - x));
	const above = change(member(1));
	const below = change(member(-1));
	return { first: (above - below) / 2, second: (above + below) / 2 };
}
