/**
 * The rolling radius that a tire's size stands for.
 *
 * Equation: r = 0.97 (rim diameter / 2 + width × aspect ratio)
 * Assumes: the loaded, rolling radius is 97 % of the free one (common practice).
 *
 * @param size - as on the sidewall: `205/50 R16`, `P205/50ZR16`, `205/50-16`
 * @returns m; null where the size can't be read
 * @example
 * rollingRadiusOfSize('205/50 R16') // => 0.296529
 */
export function rollingRadiusOfSize(size: string): number | null {
  const found = /^\s*(?:P|LT)?\s*(\d{3})\s*\/\s*(\d{2})\s*(?:Z?R|ZR|-|\s)\s*(\d{2}(?:\.5)?)\b/i.exec(size);
  if (found === null) return null;
  const [width, aspect, rim] = found.slice(1).map(Number) as [number, number, number];
  return 0.97 * ((rim * 0.0254) / 2 + (width / 1000) * (aspect / 100));
}
