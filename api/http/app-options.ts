import type { Compute } from "../compute/answer-text.ts";
import type { Settings } from "../config/settings.ts";
import type { RequestRecord } from "../observe/request-record.ts";
import type { Backlog } from "../operations/backlog.ts";
import type { Maybe } from "../operations/maybe.ts";
import type { Headers } from "./headers.ts";
import type { EdgeContext } from "./reply.ts";
import type { Pack } from "./send.ts";
import type { Asset } from "./static-file.ts";

/** Admits a request and returns headers for its response, or throws the problem that refuses it. */
export interface Admit {
	(c: EdgeContext): Maybe<Headers>;
	readonly keysRequired: boolean; // whether every request needs a key, so that no shared cache may store a response
}

/** What differs between deployments. */
export interface AppOptions {
	/** The page at `/`, where the entry has it; without it `/` returns JSON only. */
	readonly indexPage: string | undefined;
	/** Files for browsers, where the entry has them: the widget, the docs page and their assets. */
	readonly assets?: readonly Asset[];
	/** The default settings if omitted. */
	readonly settings?: Settings;
	/** Bytes held for clients, where the entry knows what they have read; if omitted, only answers under assembly count. */
	readonly backlog?: Backlog;
	/** Computes expensive answers; in place if omitted. */
	readonly compute?: Compute;
	/** Admits requests; all if omitted. */
	readonly admit?: Admit;
	/** Compresses a long answer for clients that accept gzip, where no proxy does. */
	readonly pack?: Pack;
	/** Called for each request once its response is ready, except for successful probes. */
	readonly observe?: (record: RequestRecord) => void;
	/** Called for each server error; its details never reach the client. */
	readonly onFailure: (error: unknown, requestId: string) => void;
}
