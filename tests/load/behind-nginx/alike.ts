import { gunzipSync } from "node:zlib";
import type { Bound } from "../table.ts";
import { type Answer, ask, type Question } from "./ask.ts";
import { contractQuestions } from "./contract-questions.ts";

/** Every example of the contract asked of each instance and through nginx, plain and packed: the same answer everywhere. */
export async function alike(ports: readonly number[]): Promise<readonly Bound[]> {
	const questions = contractQuestions().flatMap((question) =>
		["identity", "gzip"].map((q) => as(question, q)),
	);
	const differences: string[] = [];
	let packed = 0;
	for (const question of questions) {
		const answers: Answer[] = [];
		for (const port of ports) answers.push(await ask(port, question));
		const told = answers.map(toldBy);
		if (answers[0]!.status !== 200) differences.push(`${question.name}: ${answers[0]!.status}`);
		if (new Set(told).size !== 1) differences.push(`${question.name}: ${differenceIn(told)}`);
		if (answers.every(({ headers }) => headers["content-encoding"] === "gzip")) packed += 1;
	}
	for (const difference of differences.slice(0, 10)) console.error(difference);
	return [
		{
			name: "every example, in every form, alike from each instance and through nginx",
			holds: differences.length === 0 && packed > 0,
			found: `${questions.length} questions, ${packed} answered packed, ${differences.length} differences`,
		},
	];
}

const as = (question: Question, encoding: string): Question => ({
	...question,
	name: `${question.name}, ${encoding}`,
	headers: { ...question.headers, "Accept-Encoding": encoding },
});

/** Headers that must not depend on who answers; left out are those of a connection and of an occasion. */
const OF_THE_OCCASION = ["date", "server", "connection", "keep-alive", "transfer-encoding", "x-request-id"];

function toldBy({ status, headers, body }: Answer): string {
	const kept = Object.entries(headers)
		.filter(([name]) => !OF_THE_OCCASION.includes(name) && name !== "content-length")
		.sort(([one], [other]) => (one < other ? -1 : 1));
	const text = headers["content-encoding"] === "gzip" ? gunzipSync(body) : body;
	return JSON.stringify({ status, headers: kept, body: text.toString("utf8") });
}

function differenceIn(told: readonly string[]): string {
	const other = told.find((text) => text !== told[0])!;
	const at = [...told[0]!].findIndex((letter, i) => letter !== other[i]);
	const around = (text: string) => text.slice(Math.max(0, at - 60), at + 60);
	return `${around(told[0]!)} | ${around(other)}`;
}
