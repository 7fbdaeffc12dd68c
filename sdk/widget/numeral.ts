const MARKS = /[\u061c\u200e\u200f\u2066-\u2069]/g; // of direction, which copied text can contain
const EASTERN = /[٠-٩۰-۹]/g; // Arabic-Indic and Persian digits; the last four bits of each are its value
const GROUPED = /^([1-9]\d{0,2}([\s.,٬'’])\d{3}(?:\2\d{3})*)(?:(?!\2)[.,٫](\d+))?$/;
const DECIMAL = /^(?=.?\d)(\d*)(?:[.,٫](\d*))?$/;

/** The values that a typed number can mean: none, one, or two where a separator can mark thousands or decimals ("1,234"), the one with
 *  thousands first. Point, comma and the Arabic separators are read in every language, since keyboards and habits differ. */
export function readings(typed: string): readonly number[] {
	const text = typed
		.replace(MARKS, "")
		.trim()
		.replace(EASTERN, (digit) => String(digit.charCodeAt(0) & 15))
		.replaceAll("،", ",");
	const [, minus, digits] = /^([-−]?)\+?(.*)$/.exec(text)!;
	return [GROUPED.exec(digits!), DECIMAL.exec(digits!)].flatMap((found) => {
		if (!found) return [];
		const value = Number(`${found[1]!.replace(/\D/g, "") || 0}.${found.at(-1) || 0}`);
		return [minus ? -value : value];
	});
}
