import { describe, expect, test } from 'vitest';
import { madeReport, madeStop } from '../made-results.testing.ts';
import { everyElement, parseSvg, textsOf } from '../svg/parse-svg.testing.ts';
import { stopPicture, stopsPicture } from './stops-picture.ts';

const look = { units: 'us' } as const;
const gust = { verdict: 'rejected', reason: 'gust of wind', by: 'second driver', date: null } as const;

describe('the picture of stops', () => {
  test('is one well-formed document with its figures in words', () => {
    const svg = parseSvg(stopsPicture([madeReport('day.csv', [madeStop(1), madeStop(2)])], look));
    expect(svg).toMatchObject({ name: 'svg', attributes: { role: 'img' } });
    const [title, twin] = ['title', 'desc'].map(
      (name) => svg.children.find((each) => each.name === name)?.text,
    );
    expect(title).toBe('Measured stops: 2');
    expect(twin).toMatch(/Stop 2 in day\.csv: From 55\.9 mph to rest in 128 ft \(126 to 131 ft\) as driven/);
    expect(twin).toContain('fully developed 0.816 g');
  });

  test('marks start, rest, and 0.8 and 0.1 of the speed, in time and on the road', () => {
    const texts = textsOf(parseSvg(stopsPicture([madeReport('day.csv', [madeStop(1)])], look)));
    expect(texts).toContain('brake on, by the brake switch');
    expect(texts).toContain('at rest');
    expect(texts.filter((text) => text === '0.8 v₀')).toHaveLength(2);
    expect(texts.filter((text) => text === '0.1 v₀')).toHaveLength(2);
    expect(texts).toContain('128 ft (126 to 131 ft)');
  });

  test('puts the marks where an even deceleration passes them: 0.36 and 0.99 of the way', () => {
    const svg = parseSvg(stopsPicture([madeReport('day.csv', [madeStop(1)])], look));
    const [start, rest] = [0, 25 ** 2 / 16];
    const ticks = roadTicks(svg);
    const x = (feet: number): number => ticks(feet);
    const circles = everyElement(svg)
      .filter(({ name }) => name === 'circle')
      .map(({ attributes }) => Number(attributes['cx']));
    const along = (share: number): number => x((start + share * rest) / 0.3048);
    expect(circles.at(-2)).toBeCloseTo(along(1 - 0.8 ** 2), 0);
    expect(circles.at(-1)).toBeCloseTo(along(1 - 0.1 ** 2), 0);
  });

  test('says of a stop that does not count why, and who said so', () => {
    const left = madeStop(2, {
      counted: false,
      flags: [{ code: 'sample-gap', severity: 'excludes', reason: 'A gap of 0.8 s.' }],
    });
    const rejected = madeStop(3, { counted: false, judgement: gust });
    const text = textsOf(parseSvg(stopsPicture([madeReport('day.csv', [left, rejected])], look))).join(' ');
    expect(text).toContain('Left out: A gap of 0.8 s.');
    expect(text).toContain('Rejected by second driver: gust of wind.');
  });

  test('draws all stops to one scale; a far longer one runs off it with its figure', () => {
    const slow = madeStop(2, { applicationDistance_m: 200, duration_s: 16, counted: false });
    const texts = textsOf(parseSvg(stopsPicture([madeReport('day.csv', [madeStop(1), slow])], look)));
    expect(texts.filter((text) => text.startsWith('120'))).toHaveLength(2);
    expect(texts).toContain('off the scale: 656 ft (654 to 659 ft)');
    expect(texts).toContain('goes on to 16.0 s');
  });

  test('of one stop is null where the log has no such stop', () => {
    const report = madeReport('day.csv', [madeStop(4)]);
    expect(stopPicture(report, 3, look)).toBeNull();
    expect(stopPicture(report, 4, { units: 'metric' })).toContain('90 km/h');
  });

  test('without a stop says so instead of an empty scale', () => {
    const svg = parseSvg(stopsPicture([madeReport('walk.csv', [])], look));
    expect(textsOf(svg)).toEqual(['walk.csv: so many stops.']);
  });

  test('has no number that is none, whatever is missing of the trace', () => {
    const { trace } = madeStop(1);
    const gaps = {
      ...trace,
      deceleration_m_s2: trace.deceleration_m_s2.map((value, row) => (row % 3 === 0 ? NaN : value)),
    };
    const empty = { time_s: [], speed_m_s: [], speedStandardError_m_s: [], deceleration_m_s2: [] };
    for (const given of [gaps, empty]) {
      const svg = stopsPicture([madeReport('day.csv', [madeStop(1, { trace: given })])], look);
      expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    }
  });
});

/** px of feet, by the figures below the road. */
function roadTicks(svg: ReturnType<typeof parseSvg>): (feet: number) => number {
  const at = (label: string): number => {
    const found = everyElement(svg).findLast(({ name, text }) => name === 'text' && text === label);
    return Number(found?.attributes['x']);
  };
  const [low, high] = [at('20'), at('100')];
  return (feet) => low + ((feet - 20) / 80) * (high - low);
}
