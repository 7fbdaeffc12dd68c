/** Renders the contract with Swagger UI, from files of this service only. */
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
	validatorUrl: null, // no request to another host
	tryItOutEnabled: true,
	displayRequestDuration: true,
	defaultModelsExpandDepth: 0,
	docExpansion: "list",
	onComplete: () => document.querySelector("#servers")?.setAttribute("aria-label", "Server"), // the renderer gives it no name
});

/** Accessible names that the renderer omits. */
const NAMES = {
	".examples-select-element": "Example",
	".body-param__text": "Request body",
	".close-modal": "Close",
};

/** The renderer draws operations and the key dialog when they are opened. Some parts lack a name, others have one that differs from
 *  their text, and long examples scroll with a mouse only. */
new MutationObserver(() => {
	for (const [parts, name] of Object.entries(NAMES))
		for (const part of document.querySelectorAll(parts)) part.setAttribute("aria-label", name);
	for (const button of document.querySelectorAll(".auth-btn-wrapper button"))
		button.removeAttribute("aria-label");
	for (const example of document.querySelectorAll<HTMLElement>(".microlight")) example.tabIndex = 0;
}).observe(document.body, { childList: true, subtree: true });

/** Shows the note where the service needs a key. */
fetch("/v1/meta", { method: "HEAD" }).then(
	(answer) => {
		document.querySelector<HTMLElement>("#key")!.hidden = answer.status !== 401;
	},
	() => {}, // the renderer reports a service that is down
);
