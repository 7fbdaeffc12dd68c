/** Where the server listens, as the environment says. */
export interface Address {
	readonly host: string;
	readonly port: number;
}

/** PORT (default 8787; 0 for any free one) and HOST (default 127.0.0.1). Throws a sentence when one makes no sense. */
export function addressFrom(environment: Readonly<Record<string, string | undefined>>): Address {
	const { PORT = "8787", HOST = "127.0.0.1" } = environment;
	const port = /^\d{1,5}$/.test(PORT) ? Number(PORT) : Number.NaN;
	if (!(port <= 65_535)) throw new Error(`PORT must be a whole number from 0 to 65535, not "${PORT}"`);
	if (!/^[\w.:%-]+$/.test(HOST)) throw new Error(`HOST must be a host name or an IP address, not "${HOST}"`);
	return { host: HOST, port };
}
