/** Mixes layers that are warmer than those above, in place, until the tank is stably stratified.
 *  Going down, a layer with more energy than the one above is pooled with those above as long as their mean is warmer than the
 *  next; each layer of a pooled group has the mean, so one pass is sufficient. All layers have the same mass and wall, so the
 *  order of energies is the order of temperatures.
 *  @param energies [N]  heat content, top first [J]; the sum is preserved to round-off */
export function mixInversions(energies: Float64Array): void {
	for (let layer = 1; layer < energies.length; layer++) {
		if (!(energies[layer]! > energies[layer - 1]!)) continue;
		let top = layer;
		let sum = energies[layer]!;
		while (top > 0 && sum > energies[top - 1]! * (layer - top + 1)) {
			top--;
			sum += energies[top]!;
		}
		energies.fill(sum / (layer - top + 1), top, layer + 1);
	}
}
