import type { QuantityKind } from '@standstill/units';
import type { Estimate } from '../results/estimate.ts';
import { changeOf } from './change.ts';
import type { Change } from './change.ts';
import type { Speaker } from './speaker.ts';

/**
 * The same as `changeOf`, of what is left once the ends are printed: a change that prints as `0 to 80 ft` is not sure.
 *
 * @param change - the change with its interval, SI
 * @param kind - what it measures
 * @param trifle - size under which nobody would notice, SI
 * @param say - printer of the unit system
 * @returns the kind of change; sizes SI
 */
export function toldChange(
  change: Pick<Estimate, 'low' | 'high'>,
  kind: QuantityKind,
  trifle: number,
  say: Speaker,
): Change {
  const told = changeOf(change, trifle);
  if (told.kind !== 'less' && told.kind !== 'more') return told;
  const printsZero = /^0(?:\.0+)? to /.test(say.range(told.least, told.most, kind));
  if (!printsZero) return told;
  return { kind: told.kind === 'less' ? 'perhaps-less' : 'perhaps-more', most: told.most };
}
