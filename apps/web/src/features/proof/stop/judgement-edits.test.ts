import type { JobDocument } from '@standstill/workshop';
import { expect, it } from 'vitest';
import { addJudgement, momentOf } from './judgement-edits.ts';

const document = {
  runs: [
    { id: 'run-1', setUp: 'found', log: 'a' },
    { id: 'run-2', setUp: 'found', log: 'b' },
  ],
} as unknown as JobDocument;

it('a judgement is added to its run with a moment inside of the stop, and none is ever taken away', () => {
  const at = momentOf({ start_s: 10.004, end_s: 13.9 });
  expect(at).toBe('11.95 s');
  const once = addJudgement(document, 'run-2', {
    at,
    verdict: 'rejected',
    reason: ' A gust. ',
    by: '',
    date: '2026-10-03',
  });
  const twice = addJudgement(once, 'run-2', {
    at,
    verdict: 'restored',
    reason: 'No gust after all.',
    by: 'R',
    date: '2026-10-04',
  });
  expect(twice.runs?.[0]).toEqual(document.runs?.[0]);
  expect(twice.runs?.[1]?.judgements).toEqual([
    { at, verdict: 'rejected', reason: 'A gust.', date: '2026-10-03' },
    { at, verdict: 'restored', reason: 'No gust after all.', by: 'R', date: '2026-10-04' },
  ]);
});
