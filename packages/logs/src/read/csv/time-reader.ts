import { clockSeconds } from '../time/clock-seconds.ts';
import { midnightCounter } from '../time/midnight-counter.ts';
import { numberField } from './number-field.ts';
import type { TimePlan } from './time-plan.ts';

/** Plain seconds keep their own zero, so that a person finds a moment of the log again. */
export function startsAtZero(plan: TimePlan): boolean {
  return plan.kind === 'number' ? !plan.sinceEpoch : plan.shape === 'minutes-seconds';
}

/**
 * How fields of the time column become seconds.
 *
 * @param plan - how the column is read
 * @param decimalComma - whether the file writes 1,5 for one and a half
 * @returns takes fields in the order of the file, gives s on the source's clock; NaN where a field tells no time
 */
export function timeReader(plan: TimePlan, decimalComma: boolean): (text: string) => number {
  if (plan.kind === 'number') {
    const { factor } = plan;
    return (text) => numberField(text, decimalComma) * factor;
  }
  const { shape } = plan;
  if (shape !== 'time-of-day') return (text) => clockSeconds(text, shape);
  const continued = midnightCounter();
  return (text) => continued(clockSeconds(text, shape));
}
