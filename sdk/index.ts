export {
	type Answer,
	type Body,
	type CallOptions,
	createRaykettle,
	type Query,
	type Raykettle,
	type RaykettleOptions,
} from "./client.ts";
export { type FieldFault, type Problem, RaykettleProblem } from "./problem.ts";
export type { components, operations, paths } from "./schema.d.ts";
