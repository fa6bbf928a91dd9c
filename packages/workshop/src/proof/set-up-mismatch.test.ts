import { expect, it } from 'vitest';
import { madeRun } from './made-run.testing.ts';
import { setUpMismatch } from './set-up-mismatch.ts';

const run = (id: string, setUp: string) => madeRun({ id, setUp, log: `${id}.csv` });

it('says that the job knows a log as one of another set-up', () => {
  expect(setUpMismatch('front-kit', [run('before', 'as-found')], [run('after', 'four-wheel-kit')])).toEqual([
    'The job says that after.csv (run "after") was driven with "four-wheel-kit", not with "front-kit": what the model expects here is of another set-up than the one that was measured.',
  ]);
});

it('says that a side mixes set-ups', () => {
  const before = [run('a', 'as-found'), run('b', 'hoses')];
  expect(setUpMismatch('kit', before, [run('after', 'kit')])).toEqual([
    'By the job, the logs from before are of different set-ups (as-found and hoses): their mean is of none of them.',
  ]);
});

it('has nothing to say where all agree or the job knows no run', () => {
  expect(setUpMismatch('kit', [run('a', 'as-found')], [run('b', 'kit')])).toEqual([]);
  expect(setUpMismatch('kit', [], [])).toEqual([]);
});
