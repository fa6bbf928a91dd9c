/** Where a mark stands: px across, and its level away from the line. */
export interface Place {
  readonly at: number;
  readonly level: number;
}

/** Puts each mark on the first level, counted away from the line, where it covers none before it. */
export function stackMarks(positions: readonly number[], size: number): readonly Place[] {
  const levels: number[][] = [];
  return positions.map((at) => {
    let level = 0;
    while (levels[level]?.some((other) => Math.abs(other - at) < size) === true) level += 1;
    (levels[level] ??= []).push(at);
    return { at, level };
  });
}
