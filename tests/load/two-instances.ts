/** Two instances behind nginx, with the file that a deployment takes: either answers any request alike, and one that is killed,
 *  restarted or told to end loses nothing. Run with `npm run load:instances` after a build; needs nginx. */
import { alike } from "./behind-nginx/alike.ts";
import { closeConnections } from "./behind-nginx/ask.ts";
import { callers } from "./behind-nginx/callers.ts";
import { instance } from "./behind-nginx/instance.ts";
import { losses } from "./behind-nginx/losses.ts";
import { needNginx, proxied } from "./behind-nginx/proxied.ts";
import { refusalAlone, refusalByTime, refusals, usualProblem } from "./behind-nginx/refusals.ts";
import { type Bound, judge } from "./table.ts";

const QUOTA = 20; // requests of one address that each instance lets through
const UNLIMITED = { POOL_THREADS: "4", RATE_REQUESTS: "0", TRUSTED_PROXIES: "1" };
const LIMITED = { ...UNLIMITED, RATE_REQUESTS: String(QUOTA), RATE_WINDOW_S: "3600" };

needNginx();
const pair = [await instance(), await instance()] as const;
const restarted = (environment: Readonly<Record<string, string>>) =>
	Promise.all(
		pair.map(async (one) => {
			await one.end("SIGKILL");
			await one.start(environment);
		}),
	);

await restarted(UNLIMITED);
const proxy = await proxied([pair[0].port, pair[1].port]);
const usual = await usualProblem(pair[0].port);
const bounds: Bound[] = [];
const part = async (name: string, shown: Promise<readonly Bound[]>): Promise<void> => {
	console.log(name);
	bounds.push(...(await shown));
};
await part("every example of every operation", alike([pair[0].port, pair[1].port, proxy.port]));
await part("refusals of nginx's own", refusals(proxy.port, usual));
await part("an instance killed, brought back, both restarted", losses(proxy, pair, UNLIMITED));
await restarted(LIMITED);
await part("callers", callers(proxy, pair.length, QUOTA));
for (const one of pair) one.suspend();
await part(
	"instances that sleep",
	refusalByTime(proxy.port, usual).then((bound) => [bound]),
);
for (const one of pair) await one.end("SIGKILL");
await part(
	"instances that are gone",
	refusalAlone(proxy.port, usual).then((bound) => [bound]),
);

const told = ["boiling-point", "elevationM", "127.0.0.2", "203.0.113", "Cookie"].filter((word) =>
	proxy.written().includes(word),
);
bounds.push({
	name: "nginx writes down nothing that callers sent, nor from where",
	holds: told.length === 0 && proxy.written().includes("steady-1"),
	found: told.length === 0 ? `${proxy.written().split("\n").length} lines` : told.join(", "),
});
closeConnections();
await proxy.end();
judge(bounds);
