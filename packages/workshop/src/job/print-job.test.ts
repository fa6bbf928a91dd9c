import { describe, expect, it } from 'vitest';
import { exampleJobText } from './example-job.testing.ts';
import { newJobDocument } from './new-job-document.ts';
import { newJobText } from './new-job-text.ts';
import { printJob } from './print-job.ts';
import { readJob } from './reading/read-job.ts';
import { readJobDocument } from './reading/read-job-document.ts';

const example = readJob(exampleJobText, { file: 'job.yaml' });
if (!example.ok) throw new Error('the example job is not a job');

const said = {
  runs: [
    {
      id: 'a',
      setUp: 'as-found',
      role: 'before',
      log: 'a.csv',
      direction: 'out',
      headWind: '-5 mph',
      grade: '1 %',
      surfaceTemperature: '30 °C',
      tireTemperature: '45 °C',
      airTemperature: '20 °C',
      startTemperature: '180 °F',
      driver: 'A',
      logger: 'box 2',
      judgements: [{ at: '103.2 s', verdict: 'rejected', reason: 'A dog.', by: 'B', date: '2026-10-03' }],
    },
    { id: 'b', setUp: 'front-kit', log: 'b.csv' },
  ],
  test: { resolution: '3 ft', startTemperatureLow: '150 °F' },
  logColumns: [
    {
      headings: 't | V | W1 | W2',
      columns: {
        speed: { name: 'V', unit: 'km/h' },
        'wheel-speed': [{ name: 'W1', scale: 0.1, assumed: true }, { name: 'W2' }],
      },
    },
  ],
};

describe('a printed job', () => {
  it.each(['yaml', 'json'] as const)('reads back alike from %s', (format) => {
    const again = readJob(printJob(example.document, format), { file: `job.${format}` });
    expect(again.ok && again.document).toEqual(example.document);
    expect(again.ok && again.job).toEqual(example.job);
  });

  it.each(['yaml', 'json'] as const)('keeps what is said of runs, tests and columns in %s', (format) => {
    const first = readJobDocument({ ...example.document, ...said });
    if (!first.ok) throw new Error(first.problems.map(({ message }) => message).join('\n'));
    const again = readJob(printJob(first.document, format), { file: `job.${format}` });
    expect(again.ok && again.document).toEqual(first.document);
    expect(again.ok && again.job).toEqual(first.job);
    const [run, other] = first.job.runs;
    expect(run).toMatchObject({ role: 'before', direction: 'out', driver: 'A', logger: 'box 2' });
    expect(run?.headWind?.value).toBeCloseTo(-2.2352, 9);
    expect(run?.startTemperature?.value).toBeCloseTo(82.222222, 6);
    expect(run?.judgements[0]).toMatchObject({ at: { value: 103.2 }, verdict: 'rejected', reason: 'A dog.' });
    expect(other).toMatchObject({ headWind: null, tireTemperature: null, grade: null, judgements: [] });
    expect(first.job.test.resolution?.value).toBeCloseTo(0.9144, 9);
    expect(first.job.test.startTemperatureHigh).toBeNull();
    expect(first.job.logColumns[0]?.columns.speed).toEqual({ name: 'V', unit: 'km/h' });
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
