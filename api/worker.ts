import { z } from "@hono/zod-openapi";
import { accessControl } from "./access/access-control.ts";
import { keysFrom } from "./access/keys.ts";
import { createApp } from "./app.ts";
import { type Environment, KEYS_REQUIRED, variablesIn } from "./config/environment.ts";
import { SETTING_VARIABLES, settingsFrom } from "./config/settings.ts";
import type { EdgeContext } from "./http/reply.ts";
import { failureLine } from "./observe/failure.ts";

const Variables = z.object({ KEYS_REQUIRED, ...SETTING_VARIABLES });

type App = ReturnType<typeof createApp>;

let app: App | undefined; // one per isolate; created by the first request, as no clock runs before

/** The service on an edge runtime: the same app without threads, metrics and files, which the platform provides.
 *  Bindings replace the environment; KEYS holds the text of a keys file. */
export default {
	fetch(request: Request, bindings: Environment): Response | Promise<Response> {
		app ??= appFor(bindings);
		return app.fetch(request);
	},
};

/** The app described by its bindings. Throws one error that names every fault, for the platform's log. */
function appFor(bindings: Environment): App {
	const variables = variablesIn(Variables, bindings, "KEYS");
	const settings = settingsFrom(variables);
	return createApp({
		indexPage: undefined,
		settings,
		admit: accessControl({
			settings,
			keys: bindings.KEYS === undefined ? [] : keysFrom(bindings.KEYS),
			keysRequired: variables.KEYS_REQUIRED === "true",
			addressOf,
		}),
		onFailure: (error, requestId) => console.error(JSON.stringify({ requestId, ...failureLine(error) })),
	});
}

/** The client's address. The platform overwrites any value sent by the client. */
const addressOf = (c: EdgeContext): string => c.req.header("cf-connecting-ip") ?? "";
