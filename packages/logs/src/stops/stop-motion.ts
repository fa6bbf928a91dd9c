import type { FoundStop } from './found-stop.ts';
import type { SpeedRun } from './speed-run.ts';

/** How a stop went, however it was measured. Times are of the log's own base, the delay of the speed taken off. */
export interface StopMotion {
  readonly startBy: FoundStop['startBy'];
  /** s, start and rest. */
  readonly start: number;
  readonly end: number;
  /** m/s at the start. */
  readonly entrySpeed: number;
  /** m, from start to rest. */
  readonly distance: number;
  /** m. */
  readonly distanceError: number;
  /** s, its part that all stops of a logger share. */
  readonly startDelayError: number;
  /** s from the start until nine tenths of the deceleration are reached; null where the samples don't show it. */
  readonly buildUpTime: number | null;
  /** s and m/s from the start to rest. */
  readonly chain: SpeedRun;
  /** Makes the trace for drawing. */
  readonly trace: () => FoundStop['trace'];
}
