/** Volume of the fluid in a round tube [m³]. */
export function boreVolume(tube: { readonly innerDiameter: number; readonly length: number }): number {
	return (Math.PI / 4) * tube.innerDiameter ** 2 * tube.length;
}
