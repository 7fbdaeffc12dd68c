/** Rows as comma-separated values (RFC 4180); an absent value is an empty field. */
export function csv(rows: readonly (readonly (string | number | undefined)[])[]): string {
	return [...rows.map((row) => row.map(field).join(",")), ""].join("\r\n");
}

function field(value: string | number | undefined): string {
	const text = value === undefined ? "" : String(value);
	return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
