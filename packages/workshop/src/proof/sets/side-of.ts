import type { RunRole } from '../../job/document/run-schema.ts';
import type { ChosenSetUps } from './chosen-change.ts';
import type { PlacedLog } from './placed-log.ts';

/** Where a log goes, and what a reader must know of that. */
export interface Side {
  /** Null where it belongs to no set of this comparison. */
  readonly role: RunRole | null;
  readonly warning?: string;
}

/**
 * The set that a log belongs to. A run whose role and set-up contradict each other is left out and told: counted, it
 * would be in the wrong set.
 *
 * @param log - with its run and role
 * @param change - the set-ups before and after
 * @param isAsked - whether a person asked about these set-ups, so that runs of others are not meant
 * @returns the role that it plays here
 */
export function sideOf(log: PlacedLog, change: ChosenSetUps, isAsked: boolean): Side {
  const { run, role } = log;
  if (log.isGiven) return given(log);
  if (run === null) return { role: null };
  if (role === undefined) return { role: bySetUp(run.setUp, change) };
  if (role === 'before') return checked(log, change.against, change.setUp, isAsked);
  if (role === 'after') return checked(log, change.setUp, change.against, isAsked);
  if (role === 'repeat' && run.setUp !== change.against) {
    const warning = `Run "${run.id}" is called a repeat, but was driven with "${run.setUp}" and not with the set-up before, "${change.against ?? 'not known'}": it repeats nothing and is left out.`;
    return { role: null, warning };
  }
  return { role };
}

function bySetUp(id: string, { against, setUp }: ChosenSetUps): RunRole | null {
  if (id === against) return 'before';
  return id === setUp ? 'after' : null;
}

/** A person's word holds; where the job says otherwise, that is told. */
function given({ run, role = 'before', name }: PlacedLog): Side {
  if (run?.role === undefined || run.role === role) return { role };
  const warning = `The job calls ${name} (run "${run.id}") one of "${run.role}"; here it is taken for "${role}".`;
  return { role, warning };
}

function checked(
  { run, role = 'before' }: PlacedLog,
  own: string | null,
  other: string | null,
  isAsked: boolean,
): Side {
  if (run === null || run.setUp === own) return { role };
  if (run.setUp === other) {
    const warning = `Run "${run.id}" has the role "${role}", but was driven with "${run.setUp}", the set-up of the other side: one of the two is wrong, so it is left out.`;
    return { role: null, warning };
  }
  return isAsked ? { role: null } : { role };
}
