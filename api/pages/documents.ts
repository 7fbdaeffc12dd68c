import type { Document } from "../http/document.ts";
import { contract } from "./contract-document.ts";
import { home } from "./index-document.ts";

/** Documents that are served as text rather than computed. */
export const documents: readonly Document[] = [home, contract];
