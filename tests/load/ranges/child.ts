/** Tries one of the days in a process of its own and sends what it found to the one that started it. */
import { coverageOf, days } from "./days.ts";

const [day, plants] = process.argv.slice(2).map(Number);
const found = coverageOf(days[day!]!, plants!);
process.send!(found, () => process.disconnect());
