/** Files for browsers: the address of each, and its name in the build. */
export const SWAGGER = "/docs/swagger-ui-5.35.0"; // the version in the address: a file there never changes

const HOUR = 3600;
const YEAR = 31_536_000;
const JS = "text/javascript; charset=utf-8";
const CSS = "text/css; charset=utf-8";

export const FILES: readonly { path: string; name: string; type: string; maxAge: number }[] = [
	{ path: "/widget.js", name: "widget.js", type: JS, maxAge: HOUR },
	{ path: "/pages/home.js", name: "home.js", type: JS, maxAge: 300 },
	{ path: "/pages/home.css", name: "home.css", type: CSS, maxAge: 300 },
	{ path: "/pages/cedar-row.json", name: "cedar-row.json", type: "application/json", maxAge: 300 },
	{ path: "/pages/sun-day.svg", name: "sun-day.svg", type: "image/svg+xml", maxAge: 300 },
	{ path: "/pages/icon.svg", name: "icon.svg", type: "image/svg+xml", maxAge: HOUR },
	{ path: "/docs", name: "docs.html", type: "text/html; charset=utf-8", maxAge: 300 },
	{ path: "/pages/docs.js", name: "docs.js", type: JS, maxAge: 300 },
	{ path: "/pages/docs.css", name: "docs.css", type: CSS, maxAge: 300 },
	{ path: `${SWAGGER}.js`, name: "swagger-ui-bundle.js", type: JS, maxAge: YEAR },
	{ path: `${SWAGGER}.css`, name: "swagger-ui.css", type: CSS, maxAge: YEAR },
];
