import { contradictory, type Rule, said } from "./fault.ts";

/** Every tube is wider outside than inside. */
export const tubeWalls: Rule = ({ receiver, loop, coil }) => {
	const tubes = [
		...(receiver.kind === "efficiencyLine" ? [] : [["/receiver/tube", receiver.tube] as const]),
		["/loop/supply", loop.supply] as const,
		["/loop/return", loop.return] as const,
		["/coil", coil] as const,
	];
	return tubes
		.filter(([, tube]) => tube.outerDiameterMm <= tube.innerDiameterMm)
		.map(([pointer, tube]) =>
			contradictory(
				`${pointer}/outerDiameterMm`,
				`a tube of ${said(tube.outerDiameterMm)} mm outside has no room for a bore of ${said(tube.innerDiameterMm)} mm`,
			),
		);
};
