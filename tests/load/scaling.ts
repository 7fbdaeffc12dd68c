/** What each operation costs: its example asked over and over, the whole service on one core with one thread in the pool,
 *  nothing remembered. Prints the table of DEVELOPERS.md. Run with `npm run load:scaling` after a build. */
import { operations } from "../../api/operations/index.ts";
import { addressOf } from "./address.ts";
import { service } from "./service.ts";
import { pinThis, placeWords } from "./spawned.ts";
import { ceiling } from "./wrk.ts";

const SECONDS = 3;
const CONNECTIONS = 2; // keep one thread busy, and are let in both

pinThis();
const raykettle = await service({ POOL_THREADS: "1", ANSWER_MEMORY_MB: "0" }, []);
console.log(`${SECONDS} s each, ${placeWords()}, a pool of one\n`);
console.log("| Operation | Example | Core time [ms] | Requests/s a core |\n|---|---|---|---|");
for (const { method, path, operationId, examples } of operations) {
	const [name, example] = Object.entries(examples)[0]!;
	const isPost = method === "post";
	const address = isPost ? path : addressOf(path, example.value);
	const post = isPost ? JSON.stringify(example.value) : undefined;
	await ceiling(raykettle, address, post, 1, CONNECTIONS); // warms up
	const { perCpuSecond } = await ceiling(raykettle, address, post, SECONDS, CONNECTIONS);
	const figures = [(1000 / perCpuSecond).toPrecision(2), Number(perCpuSecond.toPrecision(2))];
	console.log(`| ${[`\`${operationId}\``, name, ...figures].join(" | ")} |`);
}
await raykettle.end();
