/** What loads are measured against: node:http and nothing else. A GET is answered with a constant, a POST with how many
 *  members its JSON has. */
import { createServer } from "node:http";

const JSON_TYPE = "application/json";
const alive = JSON.stringify({ status: "live" });

createServer((request, response) => {
	if (request.method !== "POST") {
		response.writeHead(200, { "Content-Type": JSON_TYPE, "Content-Length": alive.length });
		response.end(alive);
		return;
	}
	const chunks: Buffer[] = [];
	request.on("data", (chunk: Buffer) => chunks.push(chunk));
	request.on("end", () => {
		const members = Object.keys(JSON.parse(Buffer.concat(chunks).toString())).length;
		const text = JSON.stringify({ members });
		response.writeHead(200, { "Content-Type": JSON_TYPE, "Content-Length": text.length });
		response.end(text);
	});
}).listen(Number(process.env.PORT), "127.0.0.1");
