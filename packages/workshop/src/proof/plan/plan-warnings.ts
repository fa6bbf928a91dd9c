import type { Speaker } from '../../words/speaker.ts';
import { plural } from '../../words/plural.ts';
import type { PlanTestInput } from './plan-test.ts';
import { assumedDeceleration } from './test-practice.ts';
import type { ToldPlan } from './told-plan.ts';

interface PlanWarningsInput extends ToldPlan {
  readonly input: PlanTestInput;
  /** °C. */
  readonly window: { readonly low: number; readonly high: number };
}

/** What a reader must know of a plan: what was assumed, and what it can't show. */
export function planWarnings(plan: PlanWarningsInput, say: Speaker): string[] {
  return [
    ...unseen(plan, say),
    ...spread(plan, say),
    ...control(plan),
    ...length(plan, say),
    ...window(plan, say),
    ...heat(plan, say),
    'Changing parts takes its own time on top of the driving; what changes meanwhile (sun, wind, tires) is what the repeat shows.',
  ];
}

function unseen({ needed, runsPerSet }: PlanWarningsInput, say: Speaker): string[] {
  if (needed.runsPerSet === runsPerSet) return [];
  return [
    `A difference of ${say.plain(needed.resolution, 'stopping-distance')} is too small to be seen at this spread: make the stops more alike (same foot, same point, same temperature), or look for a larger one.`,
  ];
}

function spread({ needed, measured, runsPerSet }: PlanWarningsInput, say: Speaker): string[] {
  const { spreadOrigin, runsPerSetRange, spreadInterval } = needed;
  if (spreadOrigin === 'assumed')
    return [
      `The spread is assumed: drive ${plural(Math.max(6, runsPerSet), 'stop')} with the car as it is, and plan again with what they scatter.`,
    ];
  if (spreadOrigin === 'stated' || (measured?.degreesOfFreedom ?? 0) >= 10) return [];
  const limits = say.range(spreadInterval.low, spreadInterval.high, 'stopping-distance');
  const high = runsPerSetRange.high === null ? 'no number anybody drives' : String(runsPerSetRange.high);
  return [
    `So few stops tell the spread only roughly (${limits}): at its low end ${runsPerSetRange.low ?? 'many'} stops a set would do, at its high end it takes ${high}.`,
  ];
}

function control({ withRepeat }: PlanWarningsInput): string[] {
  if (withRepeat) return [];
  return [
    'Without the old set-up once more, or a second car that nobody changes, whatever else moves between the two sets passes for the change.',
  ];
}

function length({ measured, cooling, distance }: PlanWarningsInput, say: Speaker): string[] {
  if (measured !== null || cooling.distance !== null) return [];
  return [
    `How long a stop is, is assumed (${say.plain(distance, 'stopping-distance')}, at ${say.plain(assumedDeceleration, 'deceleration')}).`,
  ];
}

function window({ input, window: { low, high } }: PlanWarningsInput, say: Speaker): string[] {
  const isStated =
    input.startTemperature !== undefined ||
    input.job?.test.startTemperatureLow != null ||
    input.job?.test.startTemperatureHigh != null;
  if (isStated) return [];
  return [
    `The window of rotor temperatures at the start, ${say.plain(low, 'temperature')} to ${say.plain(high, 'temperature')}, is that of regulations; a car that is driven hotter is better tested hotter.`,
  ];
}

function heat({ cooling, window: { low } }: PlanWarningsInput, say: Speaker): string[] {
  return cooling.bySetUp.flatMap(({ setUp, warmUps, isReached }) => [
    ...(isReached
      ? []
      : [`The rotors of "${setUp}" do not cool to the window within an hour: take a wider one.`]),
    ...(warmUps === null
      ? [
          `By the heat model the rotors of "${setUp}" never start a stop as warm as ${say.plain(low, 'temperature')} with these rests: warm them by light braking before each counted stop, or take a lower window.`,
        ]
      : []),
  ]);
}
