import { describe, expect, test } from 'vitest';
import { madeReconciliation } from '../made-results.testing.ts';
import { everyElement, parseSvg, textsOf } from '../svg/parse-svg.testing.ts';
import { expectationPicture } from './expectation-picture.ts';

const look = { units: 'metric' } as const;

describe('the picture of what was expected and what was measured', () => {
  test('puts all of it on one road, the changes laid onto the mean before', () => {
    const svg = parseSvg(expectationPicture(madeReconciliation(), look));
    expect(textsOf(svg)).toEqual(
      expect.arrayContaining([
        'Measured before: 50.0 m (49.2 to 50.8 m)',
        'After, expected by the job: 4.0 m shorter to 2.0 m longer',
        'After, expected once the stops before are learned from: 1.0 to 3.0 m shorter',
        'After, measured: 5.1 to 6.9 m shorter',
        'Not explained by the brakes: 2.7 to 5.3 m shorter',
      ]),
    );
    const [before, after] = everyElement(svg)
      .filter(({ name }) => name === 'circle')
      .map(({ attributes }) => Number(attributes['cx']));
    const zero = 28;
    expect(((after ?? 0) - zero) / ((before ?? 0) - zero)).toBeCloseTo(44 / 50, 3);
  });

  test('without stops after shows the stops before by the job and once learned from', () => {
    const svg = parseSvg(expectationPicture({ ...madeReconciliation(), after: null, change: null }, look));
    const texts = textsOf(svg);
    expect(texts).toContain('Before, expected by the job: 52 m (48 to 56 m)');
    expect(texts.join(' ')).not.toContain('Not explained');
  });

  test('without a distance before has zero where the car stopped before', () => {
    const svg = expectationPicture({ ...madeReconciliation(), observations: [] }, look);
    expect(svg).toContain('Zero is where the car stopped before.');
    expect(svg).not.toMatch(/NaN|undefined/);
  });
});
