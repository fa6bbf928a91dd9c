import { describe, expect, it } from 'vitest';
import { exampleJobText } from './example-job.testing.ts';
import { newJobDocument } from './new-job-document.ts';
import { newJobText } from './new-job-text.ts';
import { printJob } from './print-job.ts';
import { readJob } from './reading/read-job.ts';
import { readJobDocument } from './reading/read-job-document.ts';

const example = readJob(exampleJobText, { file: 'job.yaml' });
if (!example.ok) throw new Error('the example job is not a job');

describe('a printed job', () => {
  it.each(['yaml', 'json'] as const)('reads back alike from %s', (format) => {
    const again = readJob(printJob(example.document, format), { file: `job.${format}` });
    expect(again.ok && again.document).toEqual(example.document);
    expect(again.ok && again.job).toEqual(example.job);
  });

  it('reads alike as text and as values', () => {
    const values: unknown = JSON.parse(printJob(example.document, 'json'));
    expect(readJobDocument(values)).toEqual(example);
  });

  it('has no lines to name where it never was text', () => {
    const reading = readJobDocument({ ...example.document, title: 3 });
    expect(reading.ok ? null : reading.problems).toEqual([
      {
        code: 'wrong-kind',
        file: null,
        line: null,
        column: null,
        path: 'title',
        found: '3',
        accepted: 'text',
        message: 'title is 3; accepted is text',
      },
    ]);
  });
});

describe('a new job', () => {
  it.each(['Coupe', 'Quotes " and: colons # too', "it's"])('with the title %s is a job at once', (title) => {
    const reading = readJob(newJobText(title), { file: 'new.yaml' });
    expect(reading.ok && reading.job.title).toBe(title);
    expect(newJobDocument(title).title).toBe(title);
  });

  it('shows how every class of car is called', () => {
    expect(newJobText('x')).toContain('twoSeatCoupe, midEngine, compact, sedan, utility or anyCar');
  });
});
