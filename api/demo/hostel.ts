/** A nine-bed hostel in dry mountains, invented, as is its supplier Cedar Row Heatworks with all that it sells. */
export const hostel = {
	summary: "A nine-bed mountain hostel in January",
	name: "Nine-bed hostel at 2350 m",
	supplier: "Cedar Row Heatworks",
	dish: "Cedar Row two-metre dish",
	tank: "Cedar Row two-hundred-litre tank",
	guests: 9,
	showerLitresAt40C: 35,
	request: {
		site: { latitude: 31.2, longitude: -7.9, elevationM: 2350, timeZone: "Africa/Casablanca" },
		date: "2025-01-15",
		targetTemperatureC: 60,
		sky: { kind: "clear", linkeTurbidity: 2.5, ambientMinC: -3, ambientMaxC: 9, windMPerS: 3 },
		dish: { kind: "twoAxis", diameterM: 2, focalLengthM: 1.15, reflectance: 0.9, lowestSunAltitudeDeg: 8 },
		receiver: { kind: "cavity", apertureDiameterM: "auto" },
		loop: {
			fluid: "mineralOilVg32",
			supply: { lengthM: 5, insulation: { material: "mineralWool", thicknessMm: 30 } },
			return: { lengthM: 5, insulation: { material: "mineralWool", thicknessMm: 30 } },
			pump: { flowLPerMin: 4, powerW: 30 },
		},
		coil: { lengthM: 15, innerDiameterMm: 13, outerDiameterMm: 15 },
		tank: { volumeL: 200, insulation: { material: "polyurethane", thicknessMm: 80 }, surroundingsC: 10 },
		draw: { mainsTemperatureC: 7, draws: [{ time: "16:30", litres: 70 }] },
	},
} as const;
