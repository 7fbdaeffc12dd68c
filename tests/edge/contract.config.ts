import { defineConfig } from "vitest/config";
import usual from "../../vitest.config.ts";

/** The contract tests, asked of the service in workerd instead of in process. */
export default defineConfig({
	...usual,
	test: {
		...usual.test,
		include: ["tests/contract/**/*.test.ts"],
		exclude: ["admit", "assets", "guard"].map((name) => `tests/contract/${name}.test.ts`), // they ask apps of their own
		globalSetup: "tests/edge/contract-setup.ts",
	},
});
