/** Share of hot water in a mixed flow that leaves the tap at the wanted heat content, 0–1.
 *  share = (h_wanted − h_mains)/(h_hot − h_mains); all hot where the hot water is not hot enough, none where the mains already is.
 *  @param hot,mains,wanted  enthalpies [J/kg] */
export function hotShare(hot: number, mains: number, wanted: number): number {
	if (wanted <= mains) return 0;
	return hot <= wanted ? 1 : (wanted - mains) / (hot - mains);
}
