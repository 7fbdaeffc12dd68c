import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { contract, contractText } from "./contract.ts";
import { sdkOperations } from "./sdk-operations.ts";

const write = (path: string, text: string) =>
	writeFileSync(fileURLToPath(new URL(path, import.meta.url)), text);

const built = await contract();
write("openapi.json", contractText(built));
write("../sdk/operations.ts", sdkOperations(built));
