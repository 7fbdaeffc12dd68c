import type { Answer } from "../../sdk/index.ts";
import type { hostel } from "../demo/hostel.ts";

type Day = Answer<"warmUpTank">;

const WIDTH = 78;

/** A day's answer as a person would want to read it. */
export function told(scenario: typeof hostel, day: Day): string {
	return [
		`${scenario.name}, ${scenario.request.date}`,
		`${scenario.dish} and ${scenario.tank}, by ${scenario.supplier}`,
		"",
		...verdict(day),
		...showers(scenario, day),
		"",
		...course(day),
		"",
		...balance(day),
		"",
		"Be careful of",
		...day.cautions.filter(({ severity }) => severity !== "info").flatMap(caution),
		"",
		`${day.assumed.length} values were assumed and ${day.methods.length} models used; the answer lists each with its reason or source.`,
	].join("\n");
}

function verdict(day: Day): readonly string[] {
	const target =
		day.outcome === "reached"
			? `The tank is hot at ${clock(day.targetTime ?? "")}, ${duration(day.timeToTargetMin ?? 0)} after sunrise at ${clock(day.startTime)}.`
			: `The tank does not get hot enough: ${day.reason?.message}`;
	const boiling = day.boils
		? `It boils from ${clock(day.boilTime ?? "")}, at ${one(day.boilingPointC)} °C at this elevation.`
		: `It does not boil; here water boils at ${one(day.boilingPointC)} °C.`;
	return [target, `By sunset it stands at ${one(day.endTemperatureC)} °C on average. ${boiling}`];
}

function showers(scenario: typeof hostel, day: Day): readonly string[] {
	const litres = Math.floor(day.usableLitresAt40C);
	const count = Math.floor(litres / scenario.showerLitresAt40C);
	return [
		`It then gives ${litres} L at 40 °C: ${count} showers of ${scenario.showerLitresAt40C} L for ${scenario.guests} guests.`,
		`During the day it gave ${two(day.deliveredKwh)} kWh at the tap; ${two(day.unmetKwh)} kWh were asked and not given.`,
	];
}

function course({ series }: Day): readonly string[] {
	const rows = series.time.flatMap((time, i) => (i % 4 === 0 ? [{ time, i }] : []));
	return [
		"  time   sun W/m²   air °C   tank °C   top °C   oil °C   to water W",
		...rows.map(({ time, i }) =>
			[
				`  ${clock(time)}`,
				Math.round(series.beamIrradianceWPerM2[i]!).toString().padStart(9),
				one(series.ambientC[i]!).padStart(9),
				one(series.tankMeanC[i]!).padStart(10),
				one(series.tankTopC[i]!).padStart(9),
				one(series.oilHotC[i]!).padStart(9),
				Math.round(series.powerToWaterW[i]!).toString().padStart(13),
			].join(""),
		),
	];
}

function balance({ energyBalance: e, overallEfficiency, outcome }: Day): readonly string[] {
	const { optical, receiver, loop } = e;
	const until = outcome === "reached" ? "the target" : "the end";
	return [
		"Where the sun's energy went                         kWh",
		line("beam on the dish", e.beamOnApertureKwh),
		line("+ heat from the pump", e.pumpHeatToOilKwh),
		line("− turned away: sun too low, or a limit met", e.turnedAwayKwh),
		line("− mirror: not reflected, dust, shade", optical.mirrorKwh + optical.soilingKwh + optical.blockedKwh),
		line("− beside the receiver, or reflected by it", optical.spillageKwh + optical.receiverReflectedKwh),
		line(
			"− receiver: wind, radiation, lagging",
			receiver.convectedKwh + receiver.radiatedKwh + receiver.conductedKwh,
		),
		line(
			"− pipes, fittings and pump",
			loop.supplyPipeKwh + loop.returnPipeKwh + loop.fittingsKwh + loop.pumpKwh,
		),
		line("− still in the loop", e.storedInLoopKwh),
		line("= to the water", e.toWaterKwh),
		line("    more in the tank than at the start", e.storedInTankKwh),
		line("    drawn at the taps", e.drawnAboveMainsKwh),
		line("    lost by the tank, or as steam", e.tankLossKwh + e.ventedKwh),
		`The balance closes to ${Math.max(e.residualKwh, 1e-12).toExponential(0)} kWh. Until ${until} ${Math.round(100 * overallEfficiency)} % of the beam reached the water;`,
		`the pump drew ${two(e.pumpElectricityKwh)} kWh of electricity over the day.`,
	];
}

function line(name: string, value: number): string {
	return `  ${name.padEnd(44)} ${two(value).padStart(8)}`;
}

function caution({ severity, message }: Day["cautions"][number]): readonly string[] {
	const mark = severity === "danger" ? "  ! " : "  - ";
	return wrapped(message, WIDTH - mark.length).map((text, i) => (i === 0 ? mark : "    ") + text);
}

function wrapped(text: string, width: number): readonly string[] {
	const lines: string[] = [];
	let current = "";
	for (const word of text.split(" ")) {
		if (current && current.length + 1 + word.length > width) {
			lines.push(current);
			current = word;
		} else current = current ? `${current} ${word}` : word;
	}
	return [...lines, current];
}

const one = (value: number) => value.toFixed(1);
const two = (value: number) => value.toFixed(2);
const clock = (iso: string) => iso.slice(11, 16);
const duration = (minutes: number) => `${Math.floor(minutes / 60)} h ${Math.round(minutes % 60)} min`;
