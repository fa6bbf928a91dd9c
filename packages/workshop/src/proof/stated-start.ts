import type { UnitSystem } from '@standstill/units';
import type { StopResult } from '../results/log-report.ts';
import { speaker } from '../words/speaker.ts';

interface StatedStart {
  /** °C, as a person wrote it down for the stops of the log; null where nobody did. */
  readonly stated: number | null;
  /** °C, between which stops are to start. */
  readonly window: { readonly low: number; readonly high: number };
  readonly units: UnitSystem;
}

/**
 * Takes a start temperature that a person wrote down where the log recorded none: within the window nothing is left to
 * doubt, outside it the stop is doubted by that. It excludes nothing, because one number stands for many stops.
 *
 * @param stop - as found, with its flags
 * @param start - stated temperature and window, °C; units of the reason
 * @returns the stop
 */
export function withStatedStart(stop: StopResult, { stated, window, units }: StatedStart): StopResult {
  if (stated === null || !stop.flags.some(isOpen)) return stop;
  const others = stop.flags.filter((flag) => !isOpen(flag));
  if (stated >= window.low && stated <= window.high) return { ...stop, flags: others };
  const say = speaker(units);
  const wanted = `${say.plain(window.low, 'temperature')} to ${say.plain(window.high, 'temperature')}`;
  const reason = `The rotors are stated to have started at ${say.plain(stated, 'temperature')}; ${wanted} is wanted.`;
  return { ...stop, flags: [...others, { code: 'start-temperature', severity: 'warns', reason }] };
}

/** Whether the doubt is that no log recorded the temperature. */
function isOpen({ code, severity }: StopResult['flags'][number]): boolean {
  return code === 'start-temperature' && severity === 'warns';
}
