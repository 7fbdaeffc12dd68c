/** A thread that takes long to start, as on a busy machine. */
const until = performance.now() + 1000; // longer than the gate's memory, by far
while (performance.now() < until);

export { default } from "./thread.ts";
