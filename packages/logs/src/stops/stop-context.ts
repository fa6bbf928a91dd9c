import type { ChannelTable } from '../channels/channel-table.ts';
import type { LogSensors } from '../smooth/log-sensors.ts';
import type { BrakeSignal } from './brake-start.ts';
import type { FilledOptions } from './find-options.ts';
import type { SpeedRun, SpeedTrack } from './speed-run.ts';

/** Where a stop is looked for. */
export interface StopContext {
  readonly table: ChannelTable;
  readonly track: SpeedTrack;
  readonly run: SpeedRun;
  readonly brakes: readonly BrakeSignal[];
  readonly sensors: LogSensors;
  readonly options: FilledOptions;
}
