/** Warm-up of the embedded scenario: starts the service on a free port, calls it through the SDK, prints the answer. */
import type { AddressInfo } from "node:net";
import { createRaykettle } from "../../sdk/index.ts";
import { createApp } from "../app.ts";
import { hostel } from "../demo/hostel.ts";
import { createNodeServer } from "../http/node-server.ts";
import { told } from "./demo-text.ts";

const app = createApp({
	indexPage: undefined,
	onFailure: (error) => console.error(error),
});
const server = createNodeServer(app);
await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
const { port } = server.address() as AddressInfo;
try {
	const raykettle = createRaykettle({ baseUrl: `http://127.0.0.1:${port}` });
	console.log(told(hostel, await raykettle.warmUpTank(hostel.request)));
} finally {
	server.close();
	server.closeAllConnections();
}
