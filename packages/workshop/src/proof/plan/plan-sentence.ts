import { shownByRuns } from '@standstill/logs';
import { plural } from '../../words/plural.ts';
import type { Speaker } from '../../words/speaker.ts';
import { assumedScatter } from './test-practice.ts';
import type { ToldPlan } from './told-plan.ts';

/** What to drive, in one sentence. */
export function planSentence(plan: ToldPlan, say: Speaker): string {
  const { needed, runsPerSet, speed } = plan;
  const goal = `To see a difference of ${say.plain(needed.resolution, 'stopping-distance')} from ${say.plain(speed, 'speed')}`;
  const scatter = scatterWords(plan, say);
  if (needed.runsPerSet === runsPerSet)
    return `${goal}, drive ${plural(runsPerSet, 'stop')} with each set-up, ${setsWords(plan)}: ${scatter}.`;
  const count = needed.runsPerSet === null ? 'more than a million' : String(needed.runsPerSet);
  const shows = say.plain(shownByRuns(needed, runsPerSet), 'stopping-distance');
  return `${goal} it would take ${count} stops with each set-up, which nobody drives in a day; ${runsPerSet} with each, ${setsWords(plan)}, show ${shows}: ${scatter}.`;
}

function setsWords({ withRepeat, runs }: ToldPlan): string {
  const order = withRepeat ? 'old, new and old again' : 'old and then new';
  return `${order}, ${runs} in all with the warm-ups`;
}

function scatterWords({ needed, measured }: ToldPlan, say: Speaker): string {
  const size = say.plain(needed.spread, 'stopping-distance');
  if (needed.spreadOrigin === 'measured')
    return `single stops of this car scatter by ${size}, measured from ${plural(measured?.stops ?? 0, 'stop')}`;
  if (needed.spreadOrigin === 'stated') return `single stops are stated to scatter by ${size}`;
  return `single stops are assumed to scatter by ${100 * assumedScatter} % of their distance (${size}), which nobody measured on this car`;
}
