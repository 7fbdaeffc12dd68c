/** Writes what the service answers to every example of its contract, in every form, into a folder: `npm run answers -- <folder>`.
 *  Two such folders are compared with `diff -r`, where a change is to leave every answer as it was. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { createApp } from "../api/app.ts";
import { examples } from "./examples.ts";

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error("name the folder to write into");
mkdirSync(folder, { recursive: true });
const app = createApp({
	indexPage: undefined,
	onFailure: (error) => {
		throw error;
	},
});
const EXTENSIONS = { "application/json": "json", "image/svg+xml": "svg", "text/csv": "csv" } as const;
for (const [operationId, name, type, [path, init]] of examples) {
	const response = await app.request(path, init);
	const file = `${operationId}.${name}.${EXTENSIONS[type]}`;
	writeFileSync(join(folder, file), `${response.status}\n${await response.text()}\n`);
}
console.log(`${examples.length} answers in ${folder}`);
