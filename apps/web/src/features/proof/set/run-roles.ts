import type { RunDocument, RunRole } from '@standstill/workshop';

/** The two set-ups that a page sets against each other. */
interface Pair {
  readonly before: string;
  readonly after: string;
}

/** What a run is to the pair that is looked at; null where it belongs to neither set-up. */
export type Place = RunRole | null;

export const roleTitles: Readonly<Record<RunRole, string>> = {
  before: 'a stop set before the change',
  after: 'a stop set after the change',
  repeat: 'a repeat: the old set-up once more, afterwards',
  'reference-before': 'another car left alone, on the day before',
  'reference-after': 'another car left alone, on the day after',
  fade: 'stops in a row, to see fade',
};

/**
 * Where a run belongs for a pair of set-ups. A repeat, a reference car and a fade run are no stops of either set; of the
 * rest the set-up decides, so that one run may stand before one change and after another.
 */
export function placeOf(run: RunDocument, { before, after }: Pair): Place {
  const { role, setUp } = run;
  const inPair = setUp === before || setUp === after;
  if (role === 'reference-before' || role === 'reference-after') return role;
  if (role === 'repeat') return setUp === before ? role : null;
  if (role === 'fade') return inPair ? role : null;
  if (setUp === before) return 'before';
  return setUp === after ? 'after' : null;
}

/**
 * The run as something else; its set-up follows where the role names one. Before and after are told by the set-up alone,
 * so that no role contradicts it when another pair is looked at.
 */
export function withRole(run: RunDocument, role: RunRole, pair: Pair): RunDocument {
  if (role === 'fade') return { ...run, role };
  const ofOld = role === 'before' || role === 'repeat' || role === 'reference-before';
  const { role: _before, ...plain } = { ...run, setUp: ofOld ? pair.before : pair.after };
  return role === 'before' || role === 'after' ? plain : { ...plain, role };
}
