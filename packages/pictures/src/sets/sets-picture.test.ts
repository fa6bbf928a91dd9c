import { describe, expect, test } from 'vitest';
import { madeComparison, madeReport, madeSet, madeStop } from '../made-results.testing.ts';
import { everyElement, parseSvg, textsOf, type ParsedElement } from '../svg/parse-svg.testing.ts';
import { setsPicture } from './sets-picture.ts';

const look = { units: 'metric' } as const;
const before = madeSet('before', [40, 41, 42]);
const after = madeSet('after (kit)', [30, 30.01]);
const nothing = { before: [], after: [] };

const circles = (svg: ParsedElement) =>
  everyElement(svg)
    .filter(({ name }) => name === 'circle')
    .map(({ attributes }) => ({
      x: Number(attributes['cx']),
      y: Number(attributes['cy']),
      fill: attributes['fill'],
    }));

describe('the picture of two sets', () => {
  test('has every run on one scale, and runs that would cover each other below each other', () => {
    const [, , ...runs] = circles(parseSvg(setsPicture(madeComparison(before, after), nothing, look)));
    expect(runs).toHaveLength(5);
    const [first, second, third, ...late] = runs;
    const meter = (second?.x ?? 0) - (first?.x ?? 0);
    expect((third?.x ?? 0) - (second?.x ?? 0)).toBeCloseTo(meter, 1);
    expect((first?.x ?? 0) - (late[0]?.x ?? 0)).toBeCloseTo(10 * meter, 0);
    expect(late[1]?.y).toBeGreaterThan(late[0]?.y ?? 0);
    expect(new Set(runs.slice(0, 3).map(({ fill }) => fill))).not.toEqual(
      new Set(late.map(({ fill }) => fill)),
    );
  });

  test('says the answer, both means and the difference, in the picture and in words', () => {
    const svg = parseSvg(setsPicture(madeComparison(before, after), nothing, look));
    const texts = textsOf(svg);
    expect(texts[0]).toBe('The car stops shorter.');
    expect(texts).toContain('Before: mean 41.0 m (40.5 to 41.5 m), 3 runs count');
    expect(texts).toContain('After (kit): mean 30.0 m (29.5 to 30.5 m), 2 runs count');
    expect(texts).toContain('mean 10.3 to 11.7 m shorter');
    const twin = svg.children.find(({ name }) => name === 'desc')?.text;
    expect(twin).toContain('Difference of the means: 10.3 to 11.7 m shorter.');
  });

  test('marks by shape what was left out, rejected and restored, and says why', () => {
    const stops = [
      madeStop(1, { correctedDistance_m: 40 }),
      madeStop(2, { correctedDistance_m: 43 }),
      madeStop(3, { correctedDistance_m: 42.5 }),
    ];
    const set = madeSet('before', [40, 41], {
      leftOut: [
        { log: 'day.csv', number: 2, reason: 'A gap of 0.8 s.' },
        { log: 'day.csv', number: 3, reason: 'gust of wind' },
      ],
      judged: [
        { log: 'day.csv', number: 3, verdict: 'rejected', reason: 'gust of wind' },
        { log: 'day.csv', number: 1, verdict: 'restored', reason: 'the fix was good' },
      ],
    });
    const reports = { before: [madeReport('day.csv', stops)], after: [] };
    const svg = parseSvg(setsPicture(madeComparison(set, after), reports, look));
    const texts = textsOf(svg);
    for (const meaning of ['restored by hand, counts', 'left out', 'rejected by hand'])
      expect(texts).toContain(`a run before: ${meaning}`);
    expect(texts).toContain('Before, stop 2 of day.csv: left out, A gap of 0.8 s.');
    expect(texts).toContain('Before, stop 3 of day.csv: rejected by hand, gust of wind.');
    expect(texts).toContain('Before, stop 1 of day.csv: restored by hand, the fix was good.');
    // A sample in the key and one run each: a plain square, and a square with a cross in it.
    expect(everyElement(svg).filter(({ name }) => name === 'rect')).toHaveLength(1 + 2 + 2);
  });

  test('draws nothing at a place that nobody knows: a distance from another speed', () => {
    const set = madeSet('before', [40, 41], { leftOut: [{ log: 'day.csv', number: 2, reason: 'slow' }] });
    const report = { ...madeReport('day.csv', [madeStop(2)]), nominalSpeed_m_s: 20 };
    const texts = textsOf(
      parseSvg(setsPicture(madeComparison(set, after), { before: [report], after: [] }, look)),
    );
    expect(texts).not.toContain('a run before: left out');
    expect(texts).toContain('Before, stop 2 of day.csv: left out, slow.');
  });
});
