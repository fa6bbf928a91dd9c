/** True where ours is not further from the printed number than the tolerance, both in the printed unit. */
export function agrees(
  { printed, tolerance }: { readonly printed: number; readonly tolerance: number },
  ours: number,
): boolean {
  return Math.abs(ours - printed) <= tolerance + roundingOf(printed);
}

/** What the subtraction of two doubles near `printed` may lose, so that a difference of exactly the tolerance passes. */
function roundingOf(printed: number): number {
  return 4 * Number.EPSILON * Math.abs(printed);
}
