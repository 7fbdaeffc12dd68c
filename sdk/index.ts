export type { FetchInit, RaykettleOptions } from "./call.ts";
export { createRaykettle } from "./client.ts";
export type { Answer, AnswerIn, Body, CallOptions, FormOptions, Name, OtherForm, Query } from "./method.ts";
export type { Raykettle } from "./operations.ts";
export { type FieldFault, type Problem, RaykettleProblem } from "./problem.ts";
export type { components, operations, paths } from "./schema.d.ts";
export { inUs, type UsUnit, usUnits } from "./us-units.ts";
