import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { expect, it } from "vitest";

it("runs the demo from its command to its end and states when the hostel's water is hot", async () => {
	const { stdout, stderr } = await promisify(execFile)("npm", ["run", "--silent", "demo"], {
		cwd: new URL("..", import.meta.url),
		timeout: 50_000,
	}); // an exit code other than 0 rejects
	expect(stderr).toBe("");
	expect(stdout).toMatch(/The water is hot \(60 °C\) at \d\d:\d\d, \d+ h \d+ min after sunrise/);
	expect(stdout).toMatch(/\d+ L at 40 °C: \d+ showers/);
	expect(stdout).toMatch(/= to the water +\d+\.\d\d/);
	expect(stdout).toMatch(/The balance closes to \de-\d\d kWh/);
	expect(stdout).toMatch(/Safety notes\n {2}! The focus blinds/);
});
