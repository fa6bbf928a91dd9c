/** s; where a new segment that follows a jump back is put: so long after the last row before it. */
const seam = 1;

/** A row from which on the source's clock and the time base are another distance apart. */
export interface ClockJump {
  readonly row: number;
  /** s to add to the time base to get the source's clock. */
  readonly offset: number;
}

/** Puts one clock reading after another on an ascending base. */
export interface ClockSteps {
  /**
   * @param clock - s on the source's clock
   * @param row - number of the row if it is placed
   * @param before - s on the time base of the row before; NaN for the first row
   * @returns s on the time base; NaN where the row can't be placed because its clock stands still
   */
  readonly place: (clock: number, row: number, before: number) => number;
  /** The first row and every row before which the clock jumped back, in order. */
  readonly jumps: readonly ClockJump[];
}

/**
 * Puts clock readings on one ascending base. A step back starts anew 1 s after the last row; a row at the very time of
 * the row before it is refused.
 *
 * @param zero - s on the source's clock that becomes 0; null takes the first reading
 * @returns what places the readings
 */
export function clockSteps(zero: number | null): ClockSteps {
  const jumps: ClockJump[] = [];
  let offset = 0;
  let last = -Infinity;
  const place = (clock: number, row: number, before: number): number => {
    if (jumps.length === 0) {
      offset = zero ?? clock;
      jumps.push({ row, offset });
    } else if (clock === last) return NaN;
    else if (clock < last) {
      offset = clock - (before + seam);
      jumps.push({ row, offset });
    }
    const time = clock - offset;
    if (time <= before) return NaN;
    last = clock;
    return time;
  };
  return { place, jumps };
}
