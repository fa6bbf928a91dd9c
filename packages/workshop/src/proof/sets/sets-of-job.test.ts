import { describe, expect, it } from 'vitest';
import type { RunRole } from '../../job/document/run-schema.ts';
import { exampleJobText } from '../../job/example-job.testing.ts';
import { readJob } from '../../job/reading/read-job.ts';
import type { Job } from '../../job/job.ts';
import type { LogReport } from '../../results/log-report.ts';
import { logOf } from '../log.testing.ts';
import { reportLog } from '../report-log.ts';
import type { GivenLog } from './given-log.ts';
import { setsOfJob } from './sets-of-job.ts';

/** The example job with these lines in place of its runs. */
function jobOf(...runs: readonly string[]): Job {
  const [head = ''] = exampleJobText.split('\nruns:\n');
  const reading = readJob(`${head}\nruns:\n${runs.map((run) => `  - { ${run} }\n`).join('')}`, {
    file: 'job.yaml',
  });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

const read = reportLog({ name: 'any', content: logOf([{ deceleration: 8 }, { deceleration: 7.9 }]) });
if (read.kind !== 'log-report') throw new Error(read.sentence);
const any: LogReport = read;

function log(name: string, more: { role?: RunRole; epoch?: string } = {}): GivenLog {
  const { role, epoch = null } = more;
  const report = { ...any, source: { ...any.source, name }, epoch };
  return { report, names: [name], ...(role === undefined ? {} : { role }) };
}

const namesOf = (set: { readonly reports: readonly LogReport[] } | null | undefined): readonly string[] =>
  (set?.reports ?? []).map(({ source }) => source.name);

const a = 'id: a, setUp: as-found, log: a.csv, nominalSpeed: 60 mph';
const b = 'id: b, setUp: front-kit, log: logs/b.csv, nominalSpeed: 60 mph';

describe('the sets of a job', () => {
  it('follow from the set-ups of the runs where these have no roles', () => {
    const sets = setsOfJob(jobOf(a, b), [log('b.csv'), log('a.csv')]);
    expect(namesOf(sets.compared?.before)).toEqual(['a.csv']);
    expect(namesOf(sets.compared?.after)).toEqual(['b.csv']);
    expect(sets.compared?.after.runs?.[0]?.id).toBe('b');
    expect(sets.change).toEqual({ against: 'as-found', setUp: 'front-kit' });
    expect(sets.nominalSpeed).toBeCloseTo(26.8224, 9);
    expect(sets.warnings).toEqual([]);
    expect(sets.leftOver).toEqual([]);
  });

  it('take the repeat, the reference car and the fade runs from their roles', () => {
    const job = jobOf(
      a,
      b,
      'id: c, setUp: as-found, role: repeat, log: c.csv',
      'id: d, setUp: as-found, role: reference-before, log: d.csv',
      'id: e, setUp: as-found, role: reference-after, log: e.csv',
      'id: f, setUp: front-kit, role: fade, log: f.csv',
    );
    const sets = setsOfJob(
      job,
      ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => log(`${id}.csv`)),
    );
    const { compared, fades } = sets;
    expect([compared?.before, compared?.after, compared?.repeat].map(namesOf)).toEqual([
      ['a.csv'],
      ['b.csv'],
      ['c.csv'],
    ]);
    expect(namesOf(compared?.reference?.before)).toEqual(['d.csv']);
    expect(namesOf(compared?.reference?.after)).toEqual(['e.csv']);
    expect(fades.map(({ setUp, set }) => [setUp, ...namesOf(set)])).toEqual([['front-kit', 'f.csv']]);
    expect(sets.warnings).toEqual([]);
  });

  it('leave out a run whose role and set-up contradict each other, and say so', () => {
    const wrong = 'id: c, setUp: front-kit, role: before, log: c.csv';
    const sets = setsOfJob(
      jobOf(`${a}, role: before`, b, wrong),
      [log('a.csv'), log('b.csv'), log('c.csv')],
      {
        setUps: { before: 'as-found', after: 'front-kit' },
      },
    );
    expect(namesOf(sets.before)).toEqual(['a.csv']);
    expect(sets.leftOver).toEqual(['c.csv']);
    expect(sets.warnings).toEqual([
      'Run "c" has the role "before", but was driven with "front-kit", the set-up of the other side: one of the two is wrong, so it is left out.',
    ]);
  });

  it('leave out a repeat of something else, and a reference car that misses a side', () => {
    const job = jobOf(
      a,
      b,
      'id: c, setUp: hoses-only, role: repeat, log: c.csv',
      'id: d, setUp: as-found, role: reference-before, log: d.csv',
    );
    const sets = setsOfJob(
      job,
      ['a', 'b', 'c', 'd'].map((id) => log(`${id}.csv`)),
    );
    expect(sets.compared?.repeat).toBeUndefined();
    expect(sets.compared?.reference).toBeUndefined();
    expect(sets.warnings.join('\n')).toMatch(
      /^Run "c" is called a repeat, but was driven with "hoses-only" .* left out\.\nThe reference car was driven before the change and not after it/,
    );
  });

  it('say that one set-up on both sides is no change of parts', () => {
    const sets = setsOfJob(jobOf(`${a}, role: before`, 'id: b, setUp: as-found, role: after, log: b.csv'), [
      log('a.csv'),
      log('b.csv'),
    ]);
    expect(sets.change).toBeNull();
    expect(sets.compared).not.toBeNull();
    expect(sets.warnings).toEqual([
      'The runs before and after were both driven with "as-found": what differs between them is no change of parts.',
    ]);
  });

  it('ask which set-up is meant where several were driven', () => {
    const job = jobOf(a, b, 'id: c, setUp: hoses-only, log: c.csv');
    const logs = ['a', 'b', 'c'].map((id) => log(`${id}.csv`));
    const open = setsOfJob(job, logs);
    expect(open.compared).toBeNull();
    expect(open.leftOver).toEqual(['b.csv', 'c.csv']);
    expect(open.warnings.join()).toContain(
      '(as-found, front-kit and hoses-only): say which one is the change',
    );
    const asked = setsOfJob(job, logs, { setUps: { after: 'hoses-only' } });
    expect(namesOf(asked.compared?.after)).toEqual(['c.csv']);
    expect(asked.change).toEqual({ against: 'as-found', setUp: 'hoses-only' });
    expect(asked.leftOver).toEqual(['b.csv']);
  });

  it("take a person's word on a log, and tell where the job says otherwise", () => {
    const sets = setsOfJob(jobOf(a, `${b}, role: after`), [
      log('b.csv', { role: 'before' }),
      log('unknown.csv', { role: 'after' }),
    ]);
    expect(namesOf(sets.before)).toEqual(['b.csv']);
    expect(sets.after?.runs).toEqual([null]);
    expect(sets.nominalSpeed).toBeCloseTo(26.8224, 9);
    expect(sets.warnings).toEqual([
      'The job calls b.csv (run "b") one of "after"; here it is taken for "before".',
    ]);
  });

  it('stand in the order driven where all logs tell their time', () => {
    const job = jobOf(a, 'id: c, setUp: as-found, log: c.csv', b);
    const logs = [
      log('a.csv', { epoch: '2026-05-09T10:00:00Z' }),
      log('c.csv', { epoch: '2026-05-09T09:00:00Z' }),
      log('b.csv'),
    ];
    expect(namesOf(setsOfJob(job, logs).before)).toEqual(['c.csv', 'a.csv']);
    const untold = [log('a.csv', { epoch: '2026-05-09T10:00:00Z' }), log('c.csv'), log('b.csv')];
    expect(namesOf(setsOfJob(job, untold).before)).toEqual(['a.csv', 'c.csv']);
  });
});
