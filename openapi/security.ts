/** How a caller shows who it is. */
export const SECURITY_SCHEMES = {
	apiKey: {
		type: "apiKey" as const,
		in: "header" as const,
		name: "X-Api-Key",
		description: [
			"A key of this deployment. One that begins with `rk_secret_` is for servers: keep it out of pages and apps, where it is refused.",
			"One that begins with `rk_publishable_` is for web pages: anyone may read it, and it works on the origins it was made for alone.",
			"Whether a request without a key is answered, and how many requests each caller may send, is for the deployment to say.",
		].join("\n"),
	},
};

type Requirement = Record<keyof typeof SECURITY_SCHEMES, string[]> | Record<string, never>;

/** With a key or without one: some deployments ask for it, others count by it. */
const KEY_OR_NONE: Requirement[] = [{}, { apiKey: [] }];

/** Paths under this one are guarded: keys, rates and load are looked at before anything else. Health, pages and the contract are open. */
const GUARDED = "/v1/";

/** What a guard can answer instead of the operation. */
export const GUARD_REFUSALS = [401, 403, 429, 503] as const;

export const isGuarded = (path: string) => path.startsWith(GUARDED);

export const securityOf = (path: string): Requirement[] => (isGuarded(path) ? KEY_OR_NONE : []);
