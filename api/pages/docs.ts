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
