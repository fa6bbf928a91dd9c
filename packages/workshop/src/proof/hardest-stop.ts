import type { StopResult } from '../results/log-report.ts';

/**
 * The stop of a log that a person most likely meant: the one with the greatest mean deceleration.
 *
 * @param stops - of one log
 * @returns the stop; one with a deceleration that no car can have only where there is no other; undefined for none
 */
export function hardestStop(stops: readonly StopResult[]): StopResult | undefined {
  const possible = stops.filter(({ flags }) => flags.every(({ code }) => code !== 'impossible-deceleration'));
  return (possible.length === 0 ? stops : possible).reduce<StopResult | undefined>(
    (most, stop) =>
      most === undefined || stop.meanDecelerationByDistance_m_s2 > most.meanDecelerationByDistance_m_s2
        ? stop
        : most,
    undefined,
  );
}
