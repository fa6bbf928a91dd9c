import type { Channel } from '../channels/channel-table.ts';

/** Samples of speed without a gap between them that would be too long to bridge. */
export interface SpeedRun {
  /** s, ascending. */
  readonly time: Float64Array;
  /** m/s, finite. */
  readonly speed: Float64Array;
}

/** The speed of a log, ready to look for stops in. */
export interface SpeedTrack {
  readonly channel: Channel;
  readonly runs: readonly SpeedRun[];
  /** s, usual time from one real sample to the next. */
  readonly interval: number;
  /** m/s, the step that the speed is recorded in; 0 where no step shows. */
  readonly resolution: number;
  /** Rows repeated the last known value; the runs hold only what was new. */
  readonly wasHeld: boolean;
}
