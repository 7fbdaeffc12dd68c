import { once } from "node:events";
import { pathToFileURL } from "node:url";
import { bundled } from "./bundled.ts";
import type { Order, Told } from "./inside.ts";
import { type Service, service } from "./service.ts";

/** The service with a way to look inside. */
export interface Watched extends Service {
	readonly ask: (order: Order) => Promise<Told>;
}

export async function watched(environment: Readonly<Record<string, string>>): Promise<Watched> {
	const inside = pathToFileURL(await bundled("inside.ts")).href;
	const idleThreadsListen = { PISCINA_DISABLE_ATOMICS: "1" };
	const options = ["--expose-gc", "--import", inside];
	const started = await service({ ...idleThreadsListen, ...environment }, options);
	return {
		...started,
		ask: async (order) => {
			const answer = once(started.process, "message");
			started.process.send(order);
			return (await answer)[0] as Told;
		},
	};
}
