import zoneAt from "@photostructure/tz-lookup";

// Times inside the service are unix seconds. A local time that a clock change skips is read as if the clock had not
// changed yet, so it lands after the gap, as much later as the gap is wide; one that occurs twice is the earlier.

const formats = new Map<string, Intl.DateTimeFormat>(); // building one costs 25 times a use of it
const MOST_KEPT = 700; // more than there are zones; a client's spelling variants cannot fill the memory
const LONGEST = 64; // [letters] of a zone's name; the longest today has 32

function formatOf(zone: string): Intl.DateTimeFormat {
	const kept = formats.get(zone);
	if (kept) return kept;
	const format = new Intl.DateTimeFormat("en-US", {
		timeZone: zone,
		calendar: "gregory",
		numberingSystem: "latn",
		hourCycle: "h23",
		year: "numeric",
		month: "2-digit",
		day: "2-digit",
		hour: "2-digit",
		minute: "2-digit",
		second: "2-digit",
	});
	if (formats.size < MOST_KEPT) formats.set(zone, format);
	return format;
}

/** The time zone (IANA) at a place given in degrees. A look-up in coarse cells: near a border it may be the neighbour's. */
export function timeZoneAt(latitudeDeg: number, longitudeDeg: number): string {
	return zoneAt(latitudeDeg, longitudeDeg);
}

/** Whether this runtime knows a time zone by this name. */
export function isTimeZone(name: string): boolean {
	if (name.length > LONGEST || !/^[A-Za-z][\w+/-]*$/.test(name)) return false; // a bare offset is no zone, although some runtimes accept one
	try {
		formatOf(name);
		return true;
	} catch {
		return false;
	}
}

/** How far the clocks of a zone run ahead of UTC [s] at an instant. */
export function offsetAt(time: number, zone: string): number {
	const whole = Math.floor(time);
	const parts: Record<string, number> = {};
	for (const { type, value } of formatOf(zone).formatToParts(whole * 1000)) parts[type] = Number(value);
	const { year, month, day, hour, minute, second } = parts;
	return Date.UTC(year!, month! - 1, day!, hour!, minute!, second!) / 1000 - whole;
}

/** The instant at which clocks in a zone show a local date and time.
 *  @param date  such as 2025-03-30     @param clock  such as 02:30 or 02:30:15     @returns unix time [s] */
export function instantOf(date: string, clock: string, zone: string): number {
	const shown = Date.parse(`${date}T${clock}Z`) / 1000;
	const day = 86_400;
	const before = offsetAt(shown - day, zone); // in force a day earlier and a day later: they differ
	const after = offsetAt(shown + day, zone); // only near a change of the clocks
	const early = shown - before;
	if (before === after || offsetAt(early, zone) === before) return early;
	const late = shown - after;
	return offsetAt(late, zone) === after ? late : early;
}

/** The local date on which an instant falls, such as 2025-03-30. */
export function dateOf(time: number, zone: string): string {
	return isoText(time, zone).slice(0, 10);
}

/** The text of an instant with the offset of its zone, to the second: 2025-01-15T08:30:00+05:30. */
export function isoText(time: number, zone: string): string {
	const rounded = Math.round(time);
	return isoTextAt(rounded, offsetAt(rounded, zone));
}

/** The same for many instants in rising order. The zone is looked up only where its offset can have changed. */
export function isoTexts(times: ArrayLike<number>, zone: string): string[] {
	const texts: string[] = [];
	let offset = 0;
	let knownUntil = Number.NEGATIVE_INFINITY;
	for (let i = 0; i < times.length; i++) {
		const time = Math.round(times[i]!);
		if (time > knownUntil) {
			offset = offsetAt(time, zone);
			knownUntil = sameOffsetUntil(time, offset, times[times.length - 1]!, zone);
		}
		texts.push(isoTextAt(time, offset));
	}
	return texts;
}

/** A last instant up to which an offset certainly holds: the end of the span when it is short and its ends agree. */
function sameOffsetUntil(time: number, offset: number, end: number, zone: string): number {
	const twoDays = 172_800; // [s] no zone changes its clocks and changes them back within two days
	const until = Math.min(end, time + twoDays);
	return offsetAt(until, zone) === offset ? until : time;
}

function isoTextAt(time: number, offset: number): string {
	const local = new Date((time + offset) * 1000).toISOString().slice(0, 19);
	if (offset === 0) return `${local}Z`;
	const minutes = Math.abs(Math.round(offset / 60));
	const two = (n: number) => String(n).padStart(2, "0");
	return `${local}${offset < 0 ? "-" : "+"}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
