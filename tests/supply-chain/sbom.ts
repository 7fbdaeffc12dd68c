/** Prints the bill of materials of a deployment, as JSON. Run with `npm run --silent sbom > sbom.json`. */
import { bill } from "./bill.ts";

console.log(JSON.stringify(bill(), undefined, "\t"));
