import { describe, expect, test } from 'vitest';
import { madeFade, within } from '../made-results.testing.ts';
import { everyElement, parseSvg, textsOf } from '../svg/parse-svg.testing.ts';
import { fadeLine } from './fade-line.ts';
import { fadePicture } from './fade-picture.ts';

const look = { units: 'metric' } as const;

describe('the line of a fade set', () => {
  test('goes through the mean of what counts, and its band is that of least squares', () => {
    const fitted = fadeLine(madeFade().set);
    expect(fitted?.at(1).value).toBeCloseTo(40, 9);
    expect(fitted?.at(10).value).toBeCloseTo(44.5, 9);
    const numbers = [1, 2, 3, 4, 6, 7, 8, 9, 10];
    const mean = 50 / 9;
    const spread = numbers.reduce((sum, number) => sum + (number - mean) ** 2, 0);
    const atMean = fitted?.at(mean);
    expect(((atMean?.high ?? 0) - (atMean?.low ?? 0)) / 2).toBeCloseTo(0.1 * Math.sqrt(spread / 9), 9);
  });

  test('is none where the set has no slope', () => {
    expect(fadeLine({ ...madeFade().set, slope_m_per_stop: null })).toBeNull();
  });
});

describe('the picture of stops in a row', () => {
  test('has a dot for each stop that counts, a cross for the other, and the temperatures beside them', () => {
    const svg = parseSvg(fadePicture(madeFade(), look));
    const dots = everyElement(svg).filter(
      ({ name, attributes }) => name === 'circle' && attributes['r'] === '5',
    );
    expect(dots).toHaveLength(9 + 1);
    const texts = textsOf(svg);
    expect(texts).toContain('before, stop 5 (fade.csv): left out, A gap in the samples.');
    expect(texts).toContain('a: front rotor');
    expect(texts).toContain(
      'before: each stop 0.40 to 0.60 m longer than the one before; over the whole row 3.6 to 5.4 m longer.',
    );
    const twin = svg.children.find(({ name }) => name === 'desc')?.text;
    expect(twin).toContain('before, stop 10: 44.5 m, front rotor 370 °C.');
  });

  test('tells two sets and the model apart by mark, dash and letter', () => {
    const made = madeFade();
    const against = {
      ...made.set,
      name: 'after',
      slope_m_per_stop: within(0.1, 0.1),
      growth_m: within(0.9, 0.9),
    };
    const expectation = {
      setUp: 'front-kit',
      growth_m: within(1, 0.5),
      temperatures_C: made.set.stops.map((_, index) => 90 + 20 * index),
      sentence: 'The model expects a little.',
    };
    const texts = textsOf(parseSvg(fadePicture({ ...made, against, expectation }, look)));
    expect(texts.join(' ')).toContain(
      'a: front rotor, before; A: front rotor, after; dotted: hottest rotor as the model expects it of front-kit',
    );
    expect(texts).toEqual(
      expect.arrayContaining([
        'a stop of before',
        'a stop of after',
        'a',
        'A',
        'The model expects a little.',
      ]),
    );
  });

  test('without temperatures gives the road the whole width', () => {
    const made = madeFade();
    const stops = made.set.stops.map((stop) => ({ ...stop, temperatures: [] }));
    const svg = fadePicture({ ...made, set: { ...made.set, stops } }, look);
    expect(svg).not.toContain('°C');
    expect(
      Math.max(...everyElement(parseSvg(svg)).map(({ attributes }) => Number(attributes['x2'] ?? 0))),
    ).toBe(872);
  });
});
