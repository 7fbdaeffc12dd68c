/** How requests and the service end: told to stop under load, bodies that never end, callers who go away, threads that die.
 *  Run with `npm run load:end` after a build. */
import { callersWhoLeave } from "./end/callers-who-leave.ts";
import { deadThreads } from "./end/dead-threads.ts";
import { endlessBodies } from "./end/endless-bodies.ts";
import { toldToStop } from "./end/told-to-stop.ts";
import { pinThis, placeWords } from "./spawned.ts";
import { judge } from "./table.ts";

pinThis();
console.log(placeWords());
const slow = endlessBodies(); // waits half a minute, mostly for nothing
const bounds = [...(await toldToStop()), ...(await callersWhoLeave()), ...(await deadThreads())];
judge([...bounds, ...(await slow)]);
