import type { Assumption, SizeSubject } from "../../src/index.ts";
import type { Assumed } from "../wire/defaults.ts";
import { fromSi } from "../wire/units.ts";

interface Row {
	readonly pointer: string;
	readonly toWire: (si: number) => number;
}

const same = (si: number) => si;
const { celsius, degrees, kilopascals, litres } = fromSi;

/** Pointer and unit of each value that the core may assume. */
const ROWS: Readonly<Record<SizeSubject, Row>> = {
	"sky.diffuse": { pointer: "/sky/diffuseIrradianceWPerM2", toWire: same },
	"dish.rimAngle": { pointer: "/dish/rimAngleDeg", toWire: degrees },
	"dish.focalLength": { pointer: "/dish/focalLengthM", toWire: same },
	"receiver.innerDiameter": { pointer: "/receiver/innerDiameterM", toWire: same },
	"receiver.depth": { pointer: "/receiver/depthM", toWire: same },
	"receiver.tube.length": { pointer: "/receiver/tube/lengthM", toWire: same },
	"loop.pump.casingLossCoefficient": { pointer: "/loop/pump/casingLossWPerK", toWire: same },
	"loop.control.highLimit": { pointer: "/loop/control/highLimitC", toWire: celsius },
	"loop.control.oilLimit": { pointer: "/loop/control/oilLimitC", toWire: celsius },
	"loop.expansionVolume": { pointer: "/loop/expansionL", toWire: litres },
	"coil.coilDiameter": { pointer: "/coil/coilDiameterM", toWire: same },
	"coil.length": { pointer: "/coil/lengthM", toWire: same },
	"tank.fill": { pointer: "/tank/fillL", toWire: litres },
	"tank.height": { pointer: "/tank/heightM", toWire: same },
	"tank.diameter": { pointer: "/tank/diameterM", toWire: same },
	"tank.startTemperature": { pointer: "/tank/startTemperatureC", toWire: celsius },
	"tank.layers": { pointer: "/tank/nodes", toWire: same },
	"tank.reliefPressure": { pointer: "/tank/reliefPressureKpa", toWire: kilopascals },
	"vessel.diameter": { pointer: "/vessel/diameterM", toWire: same },
	"vessel.limit": { pointer: "/vessel/oilLimitC", toWire: celsius },
	"vessel.coil.coilDiameter": { pointer: "/vessel/coil/coilDiameterM", toWire: same },
	"vessel.coil.length": { pointer: "/vessel/coil/lengthM", toWire: same },
};

/** The core's assumptions in wire units. */
export function wireAssumed(assumed: readonly Assumption[]): readonly Assumed[] {
	return assumed.map(({ subject, value, grounds }) => {
		const { pointer, toWire } = ROWS[subject];
		return { pointer, value: toWire(value), ...grounds };
	});
}
