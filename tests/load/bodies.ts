import { hostel } from "../../api/demo/hostel.ts";

/** A body that no request before had: what the service remembers is not what is measured. */
export const varied = (body: string, nth: number): string =>
	body.replaceAll("#", String(nth % 1e6).padStart(6, "0"));

const anew = (request: object): string => JSON.stringify(request).replace('"volumeL":200', '"volumeL":200.#');

/** The hostel's day, a millilitre different each time: the common heavy request. */
export const warmUp = { path: "/v1/tank/warm-up", post: anew(hostel.request) } as const;

/** What each improvement to the hostel would do: the dearest request. */
export const sensitivity = { path: "/v1/sensitivity", post: anew(hostel.request) } as const;

/** What is answered where it arrives. */
export const boilingPoint = { path: "/v1/boiling-point?elevationM=2350", post: undefined } as const;
