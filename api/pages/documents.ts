import type { Document } from "../http/document.ts";
import { contract } from "./contract-document.ts";
import { home } from "./index-document.ts";

/** What is served as a text of its own rather than computed. */
export const documents: readonly Document[] = [home, contract];
