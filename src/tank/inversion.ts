/** Mixes layers that lie warmer below colder ones, in place, until the tank is stably stratified.
 *  Going down, a layer that holds more than the one above is pooled with those above as long as their mean is warmer than the
 *  next; a pooled group holds its mean in each layer, so one pass is enough. All layers have the same mass and wall, so the
 *  order of energies is the order of temperatures.
 *  @param energies [N]  heat held, top first [J]; their sum is kept to round-off */
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
