import { GrowingColumn } from '../../channels/growing-column.ts';
import { clockSteps } from './clock-steps.ts';
import { finishedTime, type FinishedTime } from './finished-time.ts';

export type { FinishedTime };

/** One ascending time base built row by row from a clock that may stand still, jump back or leave gaps. */
export interface TimeBase {
  /**
   * Offers the clock reading of the next row.
   * @param clock - s on the source's clock
   * @returns false where the row can't be placed because its clock stands still
   */
  readonly offer: (clock: number) => boolean;
  readonly finish: () => FinishedTime;
}

/**
 * Puts clock readings on one ascending base of unknown length (`clockSteps`, `finishedTime`).
 *
 * @param zero - s on the source's clock that becomes `time` = 0; null takes the first reading
 * @returns the time base
 */
export function timeBase(zero: number | null): TimeBase {
  const time = new GrowingColumn();
  const steps = clockSteps(zero);
  return {
    offer: (clock) => {
      const placed = steps.place(clock, time.length, time.last());
      if (Number.isNaN(placed)) return false;
      time.push(placed);
      return true;
    },
    finish: () => finishedTime(time.finish(), steps.jumps),
  };
}
