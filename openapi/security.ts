/** Authentication of clients. */
export const SECURITY_SCHEMES = {
	apiKey: {
		type: "apiKey" as const,
		in: "header" as const,
		name: "X-Api-Key",
		description: [
			"A key of this deployment. A key that begins with `rk_secret_` is for servers. Keep it out of pages and apps, where it is refused.",
			"A key that begins with `rk_publishable_` is for web pages. Anyone can read it, and it works only on the origins it was issued for.",
			"Each deployment decides whether a key is required, and how many requests a client can send.",
		].join("\n"),
	},
};

type Requirement = Record<keyof typeof SECURITY_SCHEMES, string[]> | Record<string, never>;

/** With or without a key: some deployments require one, others use it only for rate limits. */
const KEY_OR_NONE: Requirement[] = [{}, { apiKey: [] }];

/** Paths under this prefix are guarded: key, rate and load are checked first. Health, pages and the contract are open. */
const GUARDED = "/v1/";

/** Statuses that a guard can return instead of the operation. */
export const GUARD_REFUSALS = [401, 403, 429, 503] as const;

export const isGuarded = (path: string) => path.startsWith(GUARDED);

export const securityOf = (path: string): Requirement[] => (isGuarded(path) ? KEY_OR_NONE : []);
