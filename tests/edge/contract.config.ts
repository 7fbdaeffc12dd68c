import { defineConfig } from "vitest/config";
import usual from "../../vitest.config.ts";

const { projects: _quickAndSlow, ...test } = usual.test!;

/** The contract tests, the slow ones too, asked of the service in workerd instead of in process. */
export default defineConfig({
	test: {
		...test,
		include: ["tests/contract/**/*.test.ts"],
		exclude: ["admit", "assets", "guard"].map((name) => `tests/contract/${name}.test.ts`), // they ask apps of their own
		globalSetup: "tests/edge/contract-setup.ts",
	},
});
