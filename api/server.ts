import type { AddressInfo } from "node:net";
import { createApp } from "./app.ts";
import { type Address, addressFrom } from "./environment.ts";
import { createNodeServer } from "./node-server.ts";
import { readPages } from "./pages/read.ts";

const GRACE = 10_000; // [ms] for requests in flight when the process is told to end

function address(): Address {
	try {
		return addressFrom(process.env);
	} catch (error) {
		console.error((error as Error).message);
		process.exit(1);
	}
}

const { host, port } = address();
const app = createApp({
	...readPages(new URL("../dist/pages/", import.meta.url)), // the same from api/ and from dist/
	onFailure: (error, requestId) => console.error(`request ${requestId} failed:`, error),
});
const server = createNodeServer(app);

server.on("error", (error: NodeJS.ErrnoException) => {
	const taken = error.code === "EADDRINUSE" ? `${host}:${port} is taken; choose another PORT` : error.message;
	console.error(`Raykettle cannot listen: ${taken}`);
	process.exit(1);
});

server.listen(port, host, () => {
	const { address: at, port: bound, family } = server.address() as AddressInfo;
	console.log(`Raykettle listens on http://${family === "IPv6" ? `[${at}]` : at}:${bound}`);
});

for (const signal of ["SIGTERM", "SIGINT"] as const)
	process.once(signal, () => {
		console.log(`${signal}: finishing what is in flight`);
		server.close(() => process.exit(0));
		server.closeIdleConnections();
		setTimeout(() => process.exit(1), GRACE).unref();
	});
