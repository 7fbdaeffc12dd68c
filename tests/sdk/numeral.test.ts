import { expect, it } from "vitest";
import { readings } from "../../sdk/widget/numeral.ts";

/** Separators as CLDR has them for en, es, ar, fr and de-CH. */
it.each([
	["5.2", [5.2]],
	["5,2", [5.2]],
	["-7,9", [-7.9]],
	["−7.9", [-7.9]], // with the sign for minus, as typeset text has it
	["\u200e-7.9", [-7.9]], // as Intl writes it in Arabic
	["+12", [12]],
	[".5", [0.5]],
	["5.", [5]],
	["2350", [2350]],
	["٥٫٢", [5.2]],
	["٢٣٥٠", [2350]],
	["١٬٢٣٤٫٥", [1234.5]],
	["١٫٢٣٤", [1.234]],
	["۵٫۲", [5.2]],
	["٥،٢", [5.2]], // the comma of an Arabic keyboard
	["1,234.5", [1234.5]],
	["1.234,5", [1234.5]],
	["1 234,5", [1234.5]],
	["1\u202f234", [1234]],
	["1'234.5", [1234.5]],
	["1.234.567", [1_234_567]],
	["0,123", [0.123]],
	["1234,567", [1234.567]],
	["1,234", [1234, 1.234]],
	["1.234", [1234, 1.234]],
	["-31.200", [-31_200, -31.2]],
	["", []],
	["-", []],
	[".", []],
	["1,2,3", []],
	["1e3", []],
	["5 m", []],
	["1.234.56", []],
	["1,234,5", []],
])("%j reads %j", (typed, meant) => expect(readings(typed)).toEqual(meant));

it("reads what Intl writes, in every language of the widget", () => {
	for (const language of ["en", "es", "ar", "ar-EG"])
		for (const value of [-7.9, 0, 5.2, 31.25, 12_345.5])
			expect(readings(new Intl.NumberFormat(language).format(value)), language).toContain(value);
});
