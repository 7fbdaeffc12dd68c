import type { Document } from "../document.ts";
import { home } from "./home.ts";
import { contract } from "./openapi.ts";

/** What is served as a text of its own rather than computed. */
export const documents: readonly Document[] = [home, contract];
