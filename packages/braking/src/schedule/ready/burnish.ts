import type { ScheduleEvent } from '../schedule-event.ts';

/** m/s, m/s², °C and m of the schedule. */
const speed = 80 / 3.6;
const deceleration = 3;
const coolTo = 100;
const distance = 2000;
/** m/s² at which the speed is regained (assumed: the text asks for no rate). */
const rate = 2;

/**
 * Answers the burnish of FMVSS 135: 200 stops from 80 km/h at 3.0 m/s², the next one when the hotter axle is at 100 °C or
 * after 2 km, whichever comes first.
 *
 * Assumes: ring temperature stands for that of a thermocouple in the pad; the speed is regained at 2 m/s².
 *
 * @param count - stops, 1; 200 where left out
 * @returns the events
 * Source: [fmvss-135]
 * @example
 * burnish().length // => 399
 */
export function burnish(count = 200): readonly ScheduleEvent[] {
  const stop: ScheduleEvent = { kind: 'slow', from: speed, to: 0, deceleration };
  const between: ScheduleEvent = { kind: 'regain', to: speed, rate, distance, coolTo };
  return Array.from({ length: count }, (_, at) => (at === 0 ? [stop] : [between, stop])).flat();
}
