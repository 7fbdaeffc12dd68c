import type { Answer } from "../../sdk/index.ts";
import { sentence } from "../../sdk/texts/sentence.ts";
import type { hostel } from "../demo/hostel.ts";

type Day = Answer<"warmUpTank">;

const WIDTH = 78;

/** A day's answer as text for a reader at a terminal. */
export function dayText(scenario: typeof hostel, day: Day): string {
	return [
		`${scenario.name}, ${scenario.request.date}`,
		...wrapped(`${scenario.dish} and ${scenario.tank}, by ${scenario.supplier}`, WIDTH),
		"",
		...verdict(scenario, day),
		...showers(scenario, day),
		"",
		...course(day),
		"",
		...balance(day),
		"",
		"Safety notes",
		...day.cautions.filter(({ severity }) => severity !== "info").flatMap(caution),
		"",
		...wrapped(
			`The service assumed ${day.assumed.length} values and used ${day.methods.length} models. The answer lists each with its reason or source.`,
			WIDTH,
		),
	].join("\n");
}

function verdict({ request }: typeof hostel, day: Day): readonly string[] {
	const target =
		day.outcome === "reached"
			? `The water is hot (${request.targetTemperatureC} °C) at ${clock(day.targetTime ?? "")}, ${duration(day.timeToTargetMin ?? 0)} after sunrise.`
			: `The water does not get hot enough: ${day.reason?.message}`;
	const boiling = day.boils
		? `The tank boils from ${clock(day.boilTime ?? "")}, at ${whole(day.boilingPointC)} °C at this elevation.`
		: `The tank does not boil; at this elevation water boils at ${whole(day.boilingPointC)} °C.`;
	return [target, `At sunset the tank is at ${whole(day.endTemperatureC)} °C on average.`, boiling];
}

function showers(scenario: typeof hostel, day: Day): readonly string[] {
	const litres = Math.floor(day.usableLitresAt40C);
	const count = Math.floor(litres / scenario.showerLitresAt40C);
	const missing =
		day.unmetKwh < 0.05 ? "met the whole need" : `fell ${tenth(day.unmetKwh)} kWh short of the need`;
	return [
		`The tank then supplies ${litres} L at 40 °C: ${count} showers of ${scenario.showerLitresAt40C} L for ${scenario.guests} guests.`,
		`During the day the taps drew ${tenth(day.deliveredKwh)} kWh of hot water, which ${missing}.`,
	];
}

function course({ series }: Day): readonly string[] {
	const rows = series.time.flatMap((time, i) => (i % 4 === 0 ? [{ time, i }] : []));
	const columns = [
		series.beamIrradianceWPerM2,
		series.ambientC,
		series.tankMeanC,
		series.tankTopC,
		series.oilHotC,
		series.powerToWaterW,
	];
	const widths = [11, 10, 12, 13, 9, 13];
	const head = ["sun W/m²", "air °C", "tank °C", "tank top °C", "oil °C", "to water W"];
	return [
		`  time ${head.map((name, column) => name.padStart(widths[column]!)).join("")}`,
		...rows.map(
			({ time, i }) =>
				`  ${clock(time)}${columns.map((column, at) => whole(column[i]!).padStart(widths[at]!)).join("")}`,
		),
	];
}

function balance({ energyBalance: e, overallEfficiency, outcome }: Day): readonly string[] {
	const { optical, receiver, loop } = e;
	const until = outcome === "reached" ? "Until the target" : "Over the day";
	return [
		"Where the sun's energy goes                         kWh",
		line("sunlight on the dish", e.beamOnApertureKwh),
		line("+ heat from the pump", e.pumpHeatToOilKwh),
		line("− dish turned away: sun low, or a limit reached", e.turnedAwayKwh),
		line("− mirror: absorbed, dust, shade", optical.mirrorKwh + optical.soilingKwh + optical.blockedKwh),
		line("− missed or reflected by the receiver", optical.spillageKwh + optical.receiverReflectedKwh),
		line(
			"− receiver: wind, radiation, insulation",
			receiver.convectedKwh + receiver.radiatedKwh + receiver.conductedKwh,
		),
		line(
			"− pipes, fittings and pump",
			loop.supplyPipeKwh + loop.returnPipeKwh + loop.fittingsKwh + loop.pumpKwh,
		),
		line("− stored in the loop", e.storedInLoopKwh),
		line("= to the water", e.toWaterKwh),
		line("    stored in the tank", e.storedInTankKwh),
		line("    drawn at the taps", e.drawnAboveMainsKwh),
		line("    lost by the tank, or as steam", e.tankLossKwh + e.ventedKwh),
		`The balance closes to ${Math.max(e.residualKwh, 1e-12).toExponential(0)} kWh.`,
		`${until}, ${Math.round(100 * overallEfficiency)} % of the sunlight on the dish heated the water.`,
		`The pump used ${two(e.pumpElectricityKwh)} kWh of electricity over the day.`,
	];
}

function line(name: string, value: number): string {
	return `  ${name.padEnd(46)} ${two(value).padStart(6)}`;
}

function caution({ code, severity, parameters, message }: Day["cautions"][number]): readonly string[] {
	const mark = severity === "danger" ? "  ! " : "  - ";
	const text = sentence("en", "cautions", code, parameters) ?? message;
	return wrapped(text, WIDTH - mark.length).map((part, i) => (i === 0 ? mark : "    ") + part);
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

const whole = (value: number) => value.toFixed(0).replace(/^-0$/, "0").replace("-", "−");
const tenth = (value: number) => value.toFixed(1);
const two = (value: number) => value.toFixed(2);
const clock = (iso: string) => iso.slice(11, 16);

function duration(minutes: number): string {
	const total = Math.round(minutes);
	return `${Math.floor(total / 60)} h ${total % 60} min`;
}
