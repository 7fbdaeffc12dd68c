import { defineConfig } from "vitest/config";

const SLOW = "tests/**/*.slow.test.ts";

/** Two projects: "quick" is `npm test`, on every change; "slow" holds the long sweeps, which `npm run test:all` runs besides.
 *  Quick files share their worker's modules, else most of the time would go into reading the same schemas for each: a test may
 *  leave nothing behind in a module or in the process. */
export default defineConfig({
	test: {
		projects: [
			{
				extends: true,
				test: { name: "quick", include: ["tests/**/*.test.ts"], exclude: [SLOW], isolate: false },
			},
			{ extends: true, test: { name: "slow", include: [SLOW] } },
		],
		testTimeout: 60_000,
		hookTimeout: 60_000,
	},
});
