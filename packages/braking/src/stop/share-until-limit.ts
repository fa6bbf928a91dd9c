/**
 * Answers after which part of a step something passes its limit, on a straight line between its ends.
 *
 * Equation: x = e_0 / (e_0 − e_1).
 * Assumes: upwards only, and at once where it is past the limit already; a smooth limit is passed either way.
 *
 * @param before - e_0, excess over the limit at the start of the step, any unit
 * @param after - e_1, excess at its end, in the same unit
 * @param isSmooth - whether the limit may be passed either way
 * @returns share of the step, 1; 1 where the limit is not passed
 * Source: [geometry]
 * @example
 * shareUntilLimit(-1, 3, false) // => 0.25
 */
export function shareUntilLimit(before: number, after: number, isSmooth: boolean): number {
  if (isSmooth) return before * after < 0 ? before / (before - after) : 1;
  if (after <= 0) return 1;
  return before < 0 ? before / (before - after) : 0;
}

/**
 * Answers after which part of a step something has come near its limit from below, on a straight line between its ends.
 *
 * Equation: x = (e_0 + n) / (e_0 − e_1).
 *
 * @param before - e_0, excess over the limit at the start of the step, any unit
 * @param after - e_1, excess at its end, in the same unit
 * @param near - n, how far below the limit is near it, in the same unit
 * @returns share of the step, 1; 0 where it is near already, 1 where it does not come near or is past the limit
 * Source: [geometry]
 * @example
 * shareUntilNear(-5, 3, 1) // => 0.5
 */
export function shareUntilNear(before: number, after: number, near: number): number {
  if (after <= -near || before > 0) return 1;
  return before < -near ? (before + near) / (before - after) : 0;
}
