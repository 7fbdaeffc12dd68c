import type { Bend } from "../numeric/moments.ts";
import type { Question, UncertainInput, Values } from "./question.ts";

/** How the values of a case answer to each of its inputs alone. */
export interface Response {
	readonly central: Values;
	readonly bends: readonly (readonly Bend[])[]; // [input][name of a value], in the order of `names`
	readonly names: readonly string[];
	readonly marched: readonly Values[]; // all that was worked out, the central case first
	readonly bent: readonly string[]; // channels tried down as well, each by the name of its first input
}

/** Which channels are tried down as well: the strongest, as long as so many cases last, or these. */
export type Down = { readonly most: number } | { readonly channels: readonly string[] };

/** Inputs that reach the values through one quantity, and what was found of it. */
interface Channel<Case> {
	readonly members: readonly { readonly index: number; readonly shift: (score: number) => number }[];
	readonly strongest: UncertainInput<Case>;
	readonly shift: (score: number) => number; // of the quantity by the strongest of them
}

/** Works out the values one channel at a time: each once a standard deviation up, and some once down as well, which gives their bend. */
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
	const bends: (readonly Bend[])[] = question.inputs.map(() => names.map(() => ({ first: 0, second: 0 })));
	channels.forEach((channel, c) => {
		for (const { index, shift } of channel.members)
			bends[index] = names.map((name) =>
				bendOf(channel.shift, shift, central[name]!, ups[c]![name]!, downs.get(c)?.[name]),
			);
	});
	const marched = [central, ...ups, ...downs.values()];
	return { central, bends, names, marched, bent: chosen.map((c) => named[c]!) };
}

/** Inputs gathered by the quantity they act through; one that moves nothing is left out. */
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

/** How far a score moves the quantity an input acts through; the score itself where it acts alone. */
function shiftBy<Case>(stated: Case, { at, through }: UncertainInput<Case>): (score: number) => number {
	if (through === undefined) return (score) => score;
	const from = through(stated);
	return (score) => through(at(stated, score)) - from;
}

/** Channels by the greatest share of any answer's variance that they hold. */
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

/** What a member's score does to a value, from what the channel's strongest input did to it by one score up and perhaps one down. */
function bendOf(
	strongest: (score: number) => number,
	member: (score: number) => number,
	central: number,
	up: number,
	down: number | undefined,
): Bend {
	const x = strongest(1);
	const y = strongest(-1);
	const rise = (up - central) / x;
	const curve = down === undefined ? 0 : ((down - central) / y - rise) / (y - x); // the line through both, divided differences
	const change = (shift: number): number => shift * (rise + curve * (shift - x));
	const above = change(member(1));
	const below = change(member(-1));
	return { first: (above - below) / 2, second: (above + below) / 2 };
}
