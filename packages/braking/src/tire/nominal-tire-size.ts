import { requireRange } from '@standstill/numerics';

export interface NominalTireSizeInput {
  /** m, section width: 0.245 of 245/55 R18. */
  readonly width: number;
  /** 1, sidewall over width: 0.55 of 245/55 R18. */
  readonly aspectRatio: number;
  /** m, rim diameter of the size's name: 18 × 0.0254. */
  readonly rimDiameter: number;
}

export interface NominalTireSize {
  /** m. */
  readonly sidewall: number;
  /** m, without load. */
  readonly outerDiameter: number;
}

/**
 * Answers how large a tire is by its name.
 *
 * Equation: sidewall = width × aspect ratio; diameter = rim + 2 sidewalls.
 * Assumes: the nominal size; a tire on another rim width, worn or pumped up differs by a percent or two.
 * Valid: width 0.1 to 0.4 m, aspect ratio 0.2 to 1, rim 0.25 to 0.66 m.
 *
 * @param input - width, m; aspect ratio, 1; rim diameter, m
 * @returns m, sidewall and outer diameter without load
 * @throws OutOfRangeError where an input cannot be
 * Source: [load-index]
 * @example
 * nominalTireSize({ width: 0.205, aspectRatio: 0.55, rimDiameter: 0.4064 }).outerDiameter // => 0.6319
 */
export function nominalTireSize(input: NominalTireSizeInput): NominalTireSize {
  const width = requireRange('tire width', input.width, 'm', 0.1, 0.4);
  const aspectRatio = requireRange('aspect ratio of the tire', input.aspectRatio, '', 0.2, 1);
  const rimDiameter = requireRange('rim diameter', input.rimDiameter, 'm', 0.25, 0.66);
  const sidewall = width * aspectRatio;
  return { sidewall, outerDiameter: rimDiameter + 2 * sidewall };
}
