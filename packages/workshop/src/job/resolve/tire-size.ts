/** What a tire's size on the sidewall says. */
export interface TireSize {
  /** As the person wrote it. */
  readonly written: string;
  /** m, where the bead sits, by the size's inches. */
  readonly rimDiameter: number;
  /** m, half of the tire's outer diameter without load. */
  readonly freeRadius: number;
  /** m, loaded and rolling. */
  readonly rollingRadius: number;
}

/**
 * What a tire's size stands for.
 *
 * Equation: r = 0.97 (rim diameter / 2 + width × aspect ratio)
 * Assumes: the loaded, rolling radius is 97 % of the free one (common practice).
 *
 * @param written - as on the sidewall: `205/50 R16`, `P205/50ZR16`, `205/50-16`
 * @returns lengths in m; null where the size can't be read
 * @example
 * tireSize('205/50 R16')?.rollingRadius // => 0.296529
 */
export function tireSize(written: string): TireSize | null {
  const found = /^\s*(?:P|LT)?\s*(\d{3})\s*\/\s*(\d{2})\s*(?:Z?R|ZR|-|\s)\s*(\d{2}(?:\.5)?)\b/i.exec(written);
  if (found === null) return null;
  const [width, aspect, rim] = found.slice(1).map(Number) as [number, number, number];
  const rimDiameter = rim * 0.0254;
  const freeRadius = rimDiameter / 2 + (width / 1000) * (aspect / 100);
  return { written, rimDiameter, freeRadius, rollingRadius: 0.97 * freeRadius };
}
