import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../example-job.testing.ts';
import { readJob } from './read-job.ts';
import { readJobDocument } from './read-job-document.ts';

/** The example with a piece taken out and another put in its place. */
const damaged = fc
  .record({
    at: fc.nat(exampleJobText.length),
    length: fc.nat(40),
    instead: fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom('\t', '{', ']', ': ', '- ', '"', '99999', '%', '\n\n', 'null', '&a ', '*a'),
    ),
  })
  .map(
    ({ at, length, instead }) => exampleJobText.slice(0, at) + instead + exampleJobText.slice(at + length),
  );

function badProblems(text: string, file: string): string[] {
  const reading = readJob(text, { file });
  if (reading.ok) return [];
  const lines = text.split('\n').length;
  const bad = reading.problems.filter(({ line, column, message, found, accepted, code }) => {
    const placed =
      line === null ? code === 'job-too-large' : line >= 1 && line <= lines && (column ?? 0) >= 1;
    const oneLine = !/[\u0000-\u001f]|undefined|\[object/.test(message);
    return !placed || !oneLine || [found, accepted, message].includes('');
  });
  return reading.problems.length === 0 ? ['refused without a problem'] : bad.map(({ message }) => message);
}

describe('whatever is in a job file', () => {
  it('a damaged job is read or refused, each mistake in one line with its place', () => {
    fc.assert(
      fc.property(damaged, (text) => {
        expect(badProblems(text, 'job.yaml')).toEqual([]);
      }),
      { numRuns: 1500 },
    );
  });

  it('any text is read or refused', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 400 }), (text) => {
        expect(badProblems(text, 'job.yaml')).toEqual([]);
      }),
      { numRuns: 1000 },
    );
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(badProblems(text, 'job.json')).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  it('any values are refused without an exception', () => {
    fc.assert(
      fc.property(fc.anything({ withNullPrototype: true, maxDepth: 4 }), (value) => {
        const reading = readJobDocument(value);
        expect(reading.ok ? [] : reading.problems).not.toHaveLength(0);
      }),
      { numRuns: 1000 },
    );
  });

  it('values nested 100,000 deep are refused, not walked', () => {
    let nested: unknown = 1;
    for (let depth = 0; depth < 100_000; depth += 1) nested = [nested];
    const reading = readJobDocument({ standstill: 2, title: nested });
    expect(reading.ok ? [] : reading.problems.map(({ code }) => code)).toEqual(['job-too-deep']);
  });
});
