/** Share of hot water in a mixed flow with the wanted enthalpy, 0–1.
 *  share = (h_wanted − h_mains)/(h_hot − h_mains); 1 where the hot water is not hot enough, 0 where the mains is.
 *  @param hot,mains,wanted  enthalpies [J/kg] */
export function hotShare(hot: number, mains: number, wanted: number): number {
	if (wanted <= mains) return 0;
	return hot <= wanted ? 1 : (wanted - mains) / (hot - mains);
}
