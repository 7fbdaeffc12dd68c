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

/** The dialog that takes a key comes later, with a button that has no name and others that are named otherwise than they read. */
new MutationObserver(() => {
	document.querySelector(".close-modal")?.setAttribute("aria-label", "Close");
	for (const button of document.querySelectorAll(".auth-btn-wrapper button"))
		button.removeAttribute("aria-label");
}).observe(document.body, { childList: true, subtree: true });
