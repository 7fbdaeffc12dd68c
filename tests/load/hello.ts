/** What a start is measured against: hono and nothing else, delivered as the service is. */
import { serve } from "@hono/node-server";
import { Hono } from "hono";

const app = new Hono();
app.get("/", (c) => c.json({ status: "live" }));
serve({ fetch: app.fetch, port: Number(process.env.PORT), hostname: "127.0.0.1" });
