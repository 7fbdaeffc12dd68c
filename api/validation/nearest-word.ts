/** Levenshtein's distance: the single-letter edits between two words, or a limit where there are as many or more. */
function edits(a: string, b: string, limit: number): number {
	if (Math.abs(a.length - b.length) >= limit) return limit;
	let last = Array.from({ length: b.length + 1 }, (_, j) => j);
	for (let i = 1; i <= a.length; i++) {
		const row = [i];
		for (let j = 1; j <= b.length; j++)
			row.push(Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
		last = row;
	}
	return last[b.length]!;
}

const LONGEST = 60; // letters; every name in the contract is much shorter
const SHORTEST = 3; // letters: a shorter beginning stands for no name, while `lat` stands for `latitude`

/** The unit at the end of a name of the contract, from the closed list of units. */
const UNIT = /(?:Kwh|Kpa|Kw|Kj|Mrad|Min|Mm2?|M2|Deg|[CHKLMSW])(?:Per[A-Z]\w*)?$/;
const OTHER_UNIT = /^(?:[A-Z][a-z\d]*(?:Per[A-Z]\w*)?|[A-Z]+)$/;

/** Whether a word is a known name in another unit: `wantedFlowGpm` for `wantedFlowLPerMin`. */
function inAnotherUnit(word: string, known: string): boolean {
	const stem = known.replace(UNIT, "");
	return stem !== known && word.startsWith(stem) && OTHER_UNIT.test(word.slice(stem.length));
}

/** Whether a word is a known name without some words before its unit: `targetC` for `targetTemperatureC`. */
function shortened(word: string, known: string): boolean {
	const unit = UNIT.exec(known)?.[0];
	if (unit === undefined || !word.endsWith(unit)) return false;
	const stem = word.slice(0, -unit.length);
	return stem.length > SHORTEST && known.startsWith(stem);
}

/** The known word that a mistyped one most likely stands for: nearly the same letters, the same name without its unit
 *  (`elevation` for `elevationM`) or in another, or with words more or less in it (`apertureDiameterM` for `diameterM`).
 *  Undefined when nothing is close. */
export function nearest(word: string, known: readonly string[]): string | undefined {
	if (word.length > LONGEST) return undefined;
	const lower = word.toLowerCase().replace(/[_-]/g, "");
	let best: string | undefined;
	let least = Math.max(2, Math.floor(word.length / 4)) + 1;
	for (const candidate of known) {
		const other = candidate.toLowerCase();
		const start =
			inAnotherUnit(word, candidate) ||
			shortened(word, candidate) ||
			(lower.length >= SHORTEST && (other.startsWith(lower) || lower.startsWith(other)));
		const end = Math.min(lower.length, other.length) >= 6 && (other.endsWith(lower) || lower.endsWith(other));
		const distance = start ? 1 : end ? 2 : edits(lower, other, least);
		if (distance < least && distance < other.length) [best, least] = [candidate, distance];
	}
	return best;
}
