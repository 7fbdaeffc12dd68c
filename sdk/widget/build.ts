import { copyFileSync, writeFileSync } from "node:fs";
import { widgetBundle } from "./bundle.ts";

/** Completes the package after `tsc`: the types of the contract, and the widget as one script. */
const inDist = (name: string) => new URL(`../dist/${name}`, import.meta.url);

copyFileSync(new URL("../schema.d.ts", import.meta.url), inDist("schema.d.ts"));
writeFileSync(inDist("widget.js"), await widgetBundle());
