/** The contract, rendered by Swagger UI from files of this service alone. */
interface SwaggerUi {
	(options: Readonly<Record<string, unknown>>): unknown;
	readonly presets: { readonly apis: unknown };
}

const { SwaggerUIBundle } = globalThis as unknown as { SwaggerUIBundle: SwaggerUi };

SwaggerUIBundle({
	url: "/openapi.json",
	dom_id: "#docs",
	presets: [SwaggerUIBundle.presets.apis],
	layout: "BaseLayout",
	validatorUrl: null, // no outside request
	tryItOutEnabled: true,
	displayRequestDuration: true,
	defaultModelsExpandDepth: 0,
	docExpansion: "list",
	onComplete: () => document.querySelector("#servers")?.setAttribute("aria-label", "Server"), // the renderer names it not
});

/** Names that the renderer leaves out. */
const NAMES = {
	".examples-select-element": "Example",
	".body-param__text": "Request body",
	".close-modal": "Close",
};

/** Operations and the dialog that takes a key are drawn as they are opened. Some of their parts lack a name, others are named
 *  otherwise than they read, and long examples scroll for a mouse alone. */
new MutationObserver(() => {
	for (const [parts, name] of Object.entries(NAMES))
		for (const part of document.querySelectorAll(parts)) part.setAttribute("aria-label", name);
	for (const button of document.querySelectorAll(".auth-btn-wrapper button"))
		button.removeAttribute("aria-label");
	for (const example of document.querySelectorAll<HTMLElement>(".microlight")) example.tabIndex = 0;
}).observe(document.body, { childList: true, subtree: true });

/** Says so where the service answers no one without a key. */
fetch("/v1/meta", { method: "HEAD" }).then(
	(answer) => {
		document.querySelector<HTMLElement>("#key")!.hidden = answer.status !== 401;
	},
	() => {}, // the renderer tells of a service that is away
);
