import type { AddressInfo } from "node:net";
import { createNodeServer } from "../api/http/node-server.ts";
import { app } from "./contract/service.ts";

/** The app on a free port, for as long as the work with it lasts. */
export async function served<T>(work: (baseUrl: string) => Promise<T>): Promise<T> {
	const server = createNodeServer(app);
	await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
	try {
		return await work(`http://127.0.0.1:${(server.address() as AddressInfo).port}`);
	} finally {
		server.close();
		server.closeAllConnections();
	}
}
