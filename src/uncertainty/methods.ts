import type { Method } from "../methods.ts";
import type { RangeReport } from "./range.ts";

const PROPAGATION: Method = {
	name: "Second-order propagation of independent uncertainties, quantiles by Cornish and Fisher",
	source: "ISO/IEC Guide 98-3 (GUM); Cornish & Fisher, Rev. Inst. Int. Stat. 5 (1937) 307–320",
	confirmed: false,
	outsideRange: false,
};

const SAMPLE: Method = {
	name: "Seeded Latin hypercube of all uncertain inputs at once",
	source: "McKay, Beckman & Conover, Technometrics 21 (1979) 239–245",
	confirmed: true,
	outsideRange: false,
};

/** Methods behind the ranges. */
export function rangeMethods({ ranges }: Pick<RangeReport, "ranges">): readonly Method[] {
	const used = (method: RangeReport["ranges"][number]["method"]) =>
		ranges.some((range) => range.method === method);
	return [...(used("propagation") ? [PROPAGATION] : []), ...(used("sample") ? [SAMPLE] : [])];
}
