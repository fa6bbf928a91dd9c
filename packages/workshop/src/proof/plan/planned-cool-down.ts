import type { Estimate } from '../../results/estimate.ts';
import type { Speaker } from '../../words/speaker.ts';
import { coolDownOf } from './cool-down.ts';
import type { CoolDown } from './cool-down.ts';
import type { PlanTestInput } from './plan-test.ts';
import { assumedInterval } from './test-practice.ts';

/** How long the brakes cool between the stops of a test, and how that is known. */
export interface PlannedCoolDown {
  /** s from one stop to the next. */
  readonly interval: Estimate;
  readonly origin: 'model' | 'assumed';
  readonly reason: (say: Speaker) => string;
  /** Null where no model says. */
  readonly warmUps: number | null;
  /** m of a stop by the model; null without one. */
  readonly distance: number | null;
  /** Of each set-up that the model could drive. */
  readonly bySetUp: readonly CoolDown[];
}

interface Asked {
  /** m/s. */
  readonly speed: number;
  /** °C. */
  readonly window: { readonly low: number; readonly high: number };
}

/**
 * The cool-down of a test: by the heat model for the set-up that takes longest, else assumed.
 *
 * @param input - of the plan; without a job nothing can be computed
 * @param asked - speed, m/s; window, °C
 * @returns interval, s, with the reason
 */
export function plannedCoolDown(input: PlanTestInput, { speed, window }: Asked): PlannedCoolDown {
  const { job, draws = 20, seed = 1 } = input;
  const ids = input.setUps ?? job?.setUps.map(({ id }) => id) ?? [];
  const bySetUp =
    job === undefined
      ? []
      : ids.flatMap((setUp) => coolDownOf(job, { setUp, speed, window, draws, seed }) ?? []);
  const slowest = bySetUp.toSorted((one, other) => other.interval.value - one.interval.value)[0];
  if (slowest === undefined)
    return {
      interval: { ...assumedInterval },
      origin: 'assumed',
      reason: (say) =>
        `Assumed: ${say.plain(assumedInterval.value, 'time')} of driving from one stop to the next; no job says how these brakes cool, so read a rotor before each stop.`,
      warmUps: null,
      distance: null,
      bySetUp,
    };
  const warm = bySetUp.map(({ warmUps }) => warmUps ?? 0);
  return {
    interval: slowest.interval,
    origin: 'model',
    reason: (say) => modelReason(slowest, window, bySetUp.length, say),
    warmUps: Math.max(...warm),
    distance: bySetUp[0]?.distance ?? null,
    bySetUp,
  };
}

function modelReason(
  { setUp, interval, isReached }: CoolDown,
  { high }: Asked['window'],
  count: number,
  say: Speaker,
): string {
  const target = say.plain(high, 'temperature');
  const which = count > 1 ? `"${setUp}", which takes longest,` : `"${setUp}"`;
  if (!isReached)
    return `By the heat model, an hour of driving does not bring the hottest rotor of ${which} back to ${target}.`;
  const time = say.range(interval.low, interval.high, 'time');
  return `By the heat model, the hottest rotor of ${which} is back at ${target} ${time} after the stop before, driving on without the brakes; a thermometer on the rotor comes before the model.`;
}
