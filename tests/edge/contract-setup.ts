import { onWorkerd } from "./workerd.ts";

/** Starts the service in workerd for a whole run of tests; whatever it tells its operator, it failed at. */
export default async function start(): Promise<() => Promise<void>> {
	const { url, written, end } = await onWorkerd({ RATE_REQUESTS: "0" });
	process.env.SERVICE_URL = url.href; // read by tests/contract/service.ts
	return async () => {
		await end();
		if (written.length === 0) return;
		process.exitCode = 1; // an error thrown here would be told, and the run pass all the same
		console.error(`The service failed:\n${written.join("\n")}`);
	};
}
