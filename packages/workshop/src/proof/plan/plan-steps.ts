import { plural } from '../../words/plural.ts';
import type { Speaker } from '../../words/speaker.ts';
import type { ToldPlan } from './told-plan.ts';

/** The test in the order in which it is done. */
export function planSteps(plan: ToldPlan, say: Speaker): string[] {
  const { withRepeat } = plan;
  return [
    'Read the cautions with everybody who takes part.',
    'Check the car: pedal, leaks, fluid, wheel nuts, tire pressures, warning lamps. Mount the logger, and let it run while the car stands still for half a minute.',
    'Mark the braking point. Drive both ways over the stretch slowly, then a few slow stops.',
    ...block('before, with the old set-up', plan, say),
    'Fit the new parts by their maker and the work sheet: car on stands, bleed, pedal firm, no leak, wheel nuts. Slow stops first; bed new pads in as their maker says, then let them cool.',
    ...block('after, with the new set-up', plan, say),
    ...(withRepeat
      ? [
          'Fit the old parts again, with the same checks and slow stops.',
          ...block('the repeat, with the old set-up', plan, say),
        ]
      : []),
    'Save each set as a log of its own under its run, with its role and what was written down, before you look at any distance; a logger that records the heading tells out from back.',
    'Check the wheel nuts again after the first miles with the parts that stay on.',
  ];
}

function block(what: string, { warmUps, runsPerSet, speed, cooling }: ToldPlan, say: Speaker): string[] {
  const from = say.plain(speed, 'speed');
  const cool = say.plain(cooling.interval.value, 'time');
  return [
    `Warm up for ${what}: ${plural(warmUps, 'stop')} from ${from} that will not count, out and back in turn.`,
    `Drive ${what}: ${plural(runsPerSet, 'stop')} from ${from}, out and back in turn, each a quick and full push held to rest, about ${cool} of driving from one stop to the next; read a rotor before each.`,
  ];
}
