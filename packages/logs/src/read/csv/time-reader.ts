import { clockSeconds } from '../time/clock-seconds.ts';
import { dateAndTime } from '../time/clock-shape.ts';
import { dateDay } from '../time/date-day.ts';
import { midnightCounter } from '../time/midnight-counter.ts';
import { numberField } from './number-field.ts';
import type { TimePlan } from './time-plan.ts';

/** Takes the fields of the time and of the date beside it in the order of the file; gives s, NaN where they tell no time. */
export type ReadTime = (time: string, date: string) => number;

/** Plain seconds keep their own zero, so that a person finds a moment of the log again. */
export function startsAtZero(plan: TimePlan): boolean {
  return plan.kind === 'number' ? !plan.sinceEpoch : plan.shape === 'minutes-seconds';
}

/**
 * How fields of the time column become seconds.
 *
 * @param plan - how the column is read
 * @param decimalComma - whether the file writes 1,5 for one and a half
 * @returns takes fields, gives s on the source's clock
 */
export function timeReader(plan: TimePlan, decimalComma: boolean): ReadTime {
  if (plan.kind === 'number') {
    const { factor } = plan;
    return (time) => numberField(time, decimalComma) * factor;
  }
  const { shape, order, dateIndex, skipsDate } = plan;
  if (dateIndex >= 0)
    return (time, date) => dateDay(date, order) * 86_400 + clockSeconds(time, 'time-of-day');
  if (shape !== 'time-of-day') return (time) => clockSeconds(time, shape, order);
  const continued = midnightCounter();
  return (time) => continued(clockSeconds(skipsDate ? dateAndTime(time.trim()).time : time, shape));
}
