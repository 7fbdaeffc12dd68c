import { hostel } from "./hostel.ts";

const { site, dish, receiver, loop, coil, tank } = hostel.request;

// Invented: the hostel's own simulation under a clear sky with one cloud, its mirror giving 0.86 of the light that it should,
// read every five minutes by thermometers that show a tenth of a kelvin.
const FIRST = Date.UTC(2025, 0, 15, 9) / 1000;
const STEP = 300; // [s]

const BEAM = [
	850, 867, 890, 905, 924, 917, 930, 939, 944, 969, 966, 966, 988, 994, 978, 981, 994, 1028, 1014, 1021, 1009,
	1030, 1017, 1032, 1045, 1037, 718, 362, 311, 416, 783, 992, 1060, 1058, 1035, 1047, 1042, 1061, 1067, 1061,
	1030, 1053, 1067, 1048, 1042, 1064, 1054, 1048, 1070, 1055, 1062, 1046, 1059, 1058, 1049, 1053, 1026, 1031,
	1026, 1034, 1035,
];
const AIR = [
	-1.4, -1, -1, -0.7, -0.7, -0.6, -0.2, 0, -0.6, 0.3, 0.1, 0.6, 0.3, 0.2, 0.9, 1.1, 1.3, 1.3, 1.7, 1.9, 1.9,
	2.2, 2.3, 2.4, 2.7, 2.9, 3.4, 3.1, 3.2, 3.6, 3.4, 3.7, 3.8, 4.5, 4.4, 4.8, 4.7, 4.8, 5.1, 5.4, 5.2, 5.6,
	5.5, 6, 5.8, 6.4, 6.6, 6.6, 6.5, 6.6, 6.9, 6.9, 7.1, 7.2, 7.6, 7.5, 7.3, 8, 7.8, 7.8, 8.1,
];
const WATER = [
	8.6, 8.6, 9.1, 9.6, 10.3, 10.8, 11.5, 12.1, 12.8, 13.4, 14.1, 14.7, 15.4, 16.1, 16.7, 17.3, 18, 18.7, 19.4,
	20.1, 20.7, 21.4, 22.2, 22.8, 23.6, 24.2, 24.9, 25.4, 25.7, 25.9, 26.2, 26.7, 27.3, 28, 28.7, 29.4, 30,
	30.8, 31.5, 32.3, 33, 33.7, 34.3, 35.1, 35.7, 36.4, 37.2, 37.9, 38.5, 39.2, 40, 40.6, 41.3, 42.1, 42.8,
	43.4, 44.1, 44.8, 45.4, 46.2, 46.8,
];

const clock = (row: number) => `${new Date((FIRST + row * STEP) * 1000).toISOString().slice(0, 19)}Z`;

/** Five hours of a January morning, with the plant described: what keeps it behind its prediction? */
export const morningRun = {
	summary: "A morning at the hostel, against what was promised",
	value: {
		run: {
			time: WATER.map((_, row) => clock(row)),
			tankTemperatureC: WATER,
			beamIrradianceWPerM2: BEAM,
			ambientC: AIR,
			windMPerS: 3,
		},
		site,
		dish,
		receiver,
		loop,
		coil,
		tank,
	},
};

/** A reading before and a reading after. */
export const twoReadings = {
	summary: "Two readings: a mean power, and nothing of why",
	value: {
		run: {
			time: ["2025-01-15T10:00:00Z", "2025-01-15T13:00:00Z"],
			tankTemperatureC: [14.2, 38.6],
			beamIrradianceWPerM2: [780, 850],
			ambientC: 6,
		},
		tank: { volumeL: 120 },
		dish: { diameterM: 1.8 },
	},
};
