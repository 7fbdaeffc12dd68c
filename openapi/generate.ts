import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { contractText } from "./contract.ts";

writeFileSync(fileURLToPath(new URL("openapi.json", import.meta.url)), await contractText());
