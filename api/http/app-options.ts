import type { Compute } from "../compute/answer-text.ts";
import type { Settings } from "../config/settings.ts";
import type { RequestRecord } from "../observe/request-record.ts";
import type { Backlog } from "../operations/backlog.ts";
import type { Maybe } from "../operations/maybe.ts";
import type { Headers } from "./headers.ts";
import type { EdgeContext } from "./reply.ts";
import type { Pack } from "./send.ts";
import type { Asset } from "./static-file.ts";

/** Lets a request in, with the headers that its answer carries for it, or throws the problem that turns it away. */
export interface Admit {
	(c: EdgeContext): Maybe<Headers>;
	readonly keysRequired: boolean; // whether nobody is let in without a key, so that no shared cache may keep an answer
}

/** What differs from one deployment to the next. */
export interface AppOptions {
	/** The page at `/`, where the entry could read it; without it `/` answers in JSON alone. */
	readonly indexPage: string | undefined;
	/** Files for browsers, where the entry could read them: the widget, the docs page and what pages need. */
	readonly assets?: readonly Asset[];
	/** The usual ones unless given. */
	readonly settings?: Settings;
	/** What is held for callers, where the entry knows what they have taken; what is being put together alone unless given. */
	readonly backlog?: Backlog;
	/** Where costly answers are worked out; in place unless given. */
	readonly compute?: Compute;
	/** Lets everyone in unless given. */
	readonly admit?: Admit;
	/** Packs a long answer for callers who take gzip, where nothing in front does. */
	readonly pack?: Pack;
	/** Told of each request once its answer is ready, but for probes that go well. */
	readonly observe?: (seen: RequestRecord) => void;
	/** Told of each failure of the service itself, whose inside a caller never sees. */
	readonly onFailure: (error: unknown, requestId: string) => void;
}
