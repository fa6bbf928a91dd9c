import type { HeatScheduleKind } from './heat-schedule.ts';

/** What may be said of a schedule. */
export type ScheduleOption =
  'speed' | 'pedalForce' | 'count' | 'interval' | 'drop' | 'grade' | 'brakeShare' | 'points';

/** Which of it means something for each schedule; the others have their own from their source. */
export const scheduleOptions: Readonly<Record<HeatScheduleKind, readonly ScheduleOption[]>> = {
  stops: ['speed', 'pedalForce', 'count', 'interval'],
  burnish: [],
  'heating-snubs': [],
  'hot-stops': ['pedalForce'],
  'bed-in': [],
  descent: ['speed', 'pedalForce', 'drop', 'grade', 'brakeShare'],
  laps: ['count', 'points'],
};
