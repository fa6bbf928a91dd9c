import type { RunRole } from '../../job/document/run-schema.ts';
import type { Job } from '../../job/job.ts';
import { listOf } from '../../words/list-of.ts';
import { setUpMismatch } from '../set-up-mismatch.ts';
import { chosenChange } from './chosen-change.ts';
import type { AskedSetUps, ChosenSetUps } from './chosen-change.ts';
import { drivenOrder } from './driven-order.ts';
import { fadesOf } from './fades-of.ts';
import type { GivenLog } from './given-log.ts';
import type { ComparedSets, JobSets } from './job-sets.ts';
import { placedLog } from './placed-log.ts';
import type { PlacedLog } from './placed-log.ts';
import { runOfLog } from './run-of-log.ts';
import { runsOf } from './run-set.ts';
import type { RunSet } from './run-set.ts';
import { sideOf } from './side-of.ts';

interface SetsOptions {
  /** Set-ups before and after, where the runs leave it open or several were driven. */
  readonly setUps?: AskedSetUps;
  /** What the two sides are called in sentences; `before` and `after` where absent. */
  readonly names?: { readonly before?: string; readonly after?: string };
}

/**
 * Sorts the logs of a job into the sets that are compared: by what a person says, else by the roles of the runs, else by
 * their set-ups. Nothing is dropped in silence: what contradicts itself is told, what is left over is named.
 *
 * @param job - the job
 * @param logs - its logs as read, and what they are called
 * @param options - set-ups that are asked about; names of the sides
 * @returns the sets, the change of set-ups, the nominal speed in m/s that the runs agree on, and what a reader must know
 */
export function setsOfJob(job: Job, logs: readonly GivenLog[], options: SetsOptions = {}): JobSets {
  const { setUps: asked = {}, names = {} } = options;
  const placed = logs.map((log) => placedLog(log, runOfLog(job.runs, log)));
  const chosen = chosenChange(job, placed, asked);
  const isAsked = asked.before !== undefined || asked.after !== undefined;
  const sides = placed.map((log) => ({ log, ...sideOf(log, chosen, isAsked) }));
  const setOf = (role: RunRole, name: string): RunSet | null =>
    setNamed(
      name,
      sides.flatMap((side) => (side.role === role ? [side.log] : [])),
    );
  const [before, after] = [setOf('before', names.before ?? 'before'), setOf('after', names.after ?? 'after')];
  const control = {
    repeat: setOf('repeat', 'repeat'),
    referenceBefore: setOf('reference-before', 'reference car before'),
    referenceAfter: setOf('reference-after', 'reference car after'),
  };
  const nominalSpeed = agreedSpeed([before, after]);
  const warnings = [
    ...sides.flatMap(({ warning }) => (warning === undefined ? [] : [warning])),
    ...changeWarnings(chosen, before, after),
    ...openWarnings(chosen, placed),
    ...referenceWarnings(control),
  ];
  return {
    compared: comparedOf({ before, after, ...control }, nominalSpeed, warnings),
    before,
    after,
    change: changeOf(chosen),
    fades: fadesOf(sides.flatMap(({ log, role }) => (role === 'fade' ? [log] : []))),
    nominalSpeed,
    leftOver: sides.flatMap(({ log, role }) => (role === null ? [log.name] : [])),
    warnings,
  };
}

function setNamed(name: string, logs: readonly PlacedLog[]): RunSet | null {
  if (logs.length === 0) return null;
  const inOrder = drivenOrder(logs);
  return { name, reports: inOrder.map(({ report }) => report), runs: inOrder.map(({ run }) => run) };
}

interface Found {
  readonly before: RunSet | null;
  readonly after: RunSet | null;
  readonly repeat: RunSet | null;
  readonly referenceBefore: RunSet | null;
  readonly referenceAfter: RunSet | null;
}

function comparedOf(
  found: Found,
  nominalSpeed: number | null,
  warnings: readonly string[],
): ComparedSets | null {
  const { before, after, repeat, referenceBefore, referenceAfter } = found;
  if (before === null || after === null) return null;
  return {
    before,
    after,
    ...(repeat === null ? {} : { repeat }),
    ...(referenceBefore === null || referenceAfter === null
      ? {}
      : { reference: { before: referenceBefore, after: referenceAfter } }),
    ...(nominalSpeed === null ? {} : { nominalSpeed }),
    warnings,
  };
}

function changeOf({ against, setUp }: ChosenSetUps): JobSets['change'] {
  return against === null || setUp === null || against === setUp ? null : { against, setUp };
}

function agreedSpeed(sets: readonly (RunSet | null)[]): number | null {
  const runs = sets.flatMap((set) => runsOf(set ?? {}));
  const speeds = new Set(runs.map(({ nominalSpeed }) => nominalSpeed?.value));
  return speeds.size === 1 ? (runs[0]?.nominalSpeed?.value ?? null) : null;
}

function changeWarnings(
  { against, setUp }: ChosenSetUps,
  before: RunSet | null,
  after: RunSet | null,
): readonly string[] {
  const [first, second] = [runsOf(before ?? {}), runsOf(after ?? {})];
  if (setUp !== null && setUp === against)
    return [
      `The runs before and after were both driven with "${setUp}": what differs between them is no change of parts.`,
    ];
  return setUpMismatch(setUp, first, second);
}

/** Several set-ups were driven, and nothing tells which two are meant. */
function openWarnings({ setUp }: ChosenSetUps, placed: readonly PlacedLog[]): readonly string[] {
  const driven = [...new Set(placed.flatMap(({ run }) => (run === null ? [] : [run.setUp])))];
  if (setUp !== null || driven.length < 2) return [];
  return [
    `Runs of several set-ups are there (${listOf(driven)}): say which one is the change, or give the runs the roles "before" and "after".`,
  ];
}

function referenceWarnings({
  referenceBefore: before,
  referenceAfter: after,
}: Pick<Found, 'referenceBefore' | 'referenceAfter'>): readonly string[] {
  if ((before === null) === (after === null)) return [];
  const [there, missing] = before === null ? ['after', 'before'] : ['before', 'after'];
  return [
    `The reference car was driven ${there} the change and not ${missing} it: without both it controls nothing, so it is left aside.`,
  ];
}
