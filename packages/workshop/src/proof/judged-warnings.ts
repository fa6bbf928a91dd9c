import { compareStopSets } from '@standstill/logs';
import type { CompareInput, StopSet, StopSetComparison } from '@standstill/logs';
import { plural } from '../words/plural.ts';
import { signedRange } from '../words/signed-range.ts';
import type { Speaker } from '../words/speaker.ts';

/**
 * What the judgements of a person do to the difference: without them it is said, too, so that nobody can reject stops
 * until the answer fits.
 *
 * @param compared - with the judgements
 * @param input - what was compared
 * @param say - printer of the unit system
 * @returns one sentence; none where nobody judged
 */
export function judgedWarnings(compared: StopSetComparison, input: CompareInput, say: Speaker): string[] {
  const judged = [...compared.before.judged, ...compared.after.judged];
  if (judged.length === 0) return [];
  const without = compareStopSets({ ...input, before: plain(input.before), after: plain(input.after) });
  const said = `${plural(judged.length, 'stop')} ${judged.length === 1 ? 'was' : 'were'} rejected or restored by hand`;
  if (!without.ok) return [`${said}; without that there would be too few stops to compare.`];
  const [now, then] = [compared, without].map(({ difference }) =>
    signedRange(difference, 'stopping-distance', say),
  );
  return [
    now === then
      ? `${said}; without that the difference would be the same.`
      : `${said}; without that the difference would be ${then ?? ''}, not ${now ?? ''}.`,
  ];
}

function plain({ judgements: _judgements, ...set }: StopSet): StopSet {
  return set;
}
