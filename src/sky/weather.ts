/** Sun and weather in columns over the same instants: the input of a simulated day. */
export interface Weather {
	readonly time: Float64Array; // unix time [s]
	readonly sunAltitude: Float64Array; // apparent [rad], negative below the horizon
	readonly sunAzimuth: Float64Array; // clockwise from north [rad]
	readonly beam: Float64Array; // beam irradiance on a plane normal to it [W/m²]
	readonly diffuse: Float64Array; // sky diffuse on the horizontal [W/m²]
	readonly ambient: Float64Array; // air temperature [K]
	readonly wind: Float64Array; // wind speed at the plant [m/s]
}
