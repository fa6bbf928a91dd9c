import { describe, expect, test } from 'vitest';
import { madeStop, setOf, sixty } from '../set-of.testing.ts';
import { controlledDifference, type ControlledDifference } from './controlled-difference.ts';

const options = { nominalSpeed: sixty, definition: 'application' } as const;

function controlled(...args: Parameters<typeof controlledDifference>): ControlledDifference {
  const found = controlledDifference(...args);
  if (!found.ok) throw new Error(found.code);
  return found;
}

describe('controlledDifference', () => {
  const before = setOf([44, 45, 46, 45]);
  const after = setOf([40, 41, 42, 41]);
  const repeat = setOf([42, 43, 44, 43]);

  test('a repeat: half the drift is taken out, and the interval is of three sets', () => {
    const found = controlled({ before, after, repeat }, options);
    expect(found.kind).toBe('repeat');
    expect(found.drift.value).toBeCloseTo(-2, 12);
    expect(found.drifts).toBe(true);
    expect(found.difference.value).toBeCloseTo(-3, 12);
    // s² = 2/3 in each; v = s²/4 (1 + 1/4 + 1/4); ν = 1.5² / ((1 + 1/16 + 1/16)/3) = 6
    expect(found.degreesOfFreedom).toBeCloseTo(6, 9);
    expect(found.standardError).toBeCloseTo(Math.sqrt((2 / 3 / 4) * 1.5), 12);
    expect(found.difference.high).toBeCloseTo(-3 + 2.446912 * 0.5, 5);
    expect(found.control.map(({ mean }) => mean.value)).toEqual([43]);
  });

  test('a new set-up driven soon after the old one takes little of the drift', () => {
    expect(controlled({ before, after, repeat }, { ...options, place: 0.25 }).difference.value).toBeCloseTo(
      -3.5,
      12,
    );
    expect(() => controlledDifference({ before, after, repeat }, { ...options, place: 2 })).toThrow('place');
  });

  test('a reference car: difference of differences', () => {
    const referenceBefore = setOf([50, 51, 52, 51]);
    const referenceAfter = setOf([49, 50, 51, 50]);
    const found = controlled({ before, after, referenceBefore, referenceAfter }, options);
    expect(found).toMatchObject({ kind: 'reference-car', drifts: false });
    expect(found.drift.value).toBeCloseTo(-1, 12);
    expect(found.difference.value).toBeCloseTo(-3, 12);
    expect(found.degreesOfFreedom).toBeCloseTo(12, 9);
    expect(found.control).toHaveLength(2);
  });

  test('one logger drops out of both; two loggers widen by what the weights leave', () => {
    const late = (distances: readonly number[]): ReturnType<typeof setOf> =>
      setOf([], {
        stops: distances.map((distance) =>
          madeStop(distance, 1, { startDelayError: 0.05, distanceStandardError: 1.4 }),
        ),
      });
    const sets = {
      before: late([44, 45, 46, 45]),
      after: late([40, 41, 42, 41]),
      repeat: late([42, 43, 44, 43]),
    };
    const plain = controlled({ before, after, repeat }, options);
    expect(controlled(sets, options).difference.high).toBeCloseTo(plain.difference.high, 9);
    const apart = controlled(sets, { ...options, sameLogger: false }).difference;
    const own = plain.difference.high - plain.difference.value;
    expect(apart.high - apart.value).toBeCloseTo(
      Math.hypot(own, 1.959964 * Math.sqrt(1.5) * 0.05 * sixty),
      6,
    );
  });

  test('a set without spread is refused by its role', () => {
    expect(controlledDifference({ before, after, repeat: setOf([42]) }, options)).toMatchObject({
      ok: false,
      code: 'set-too-small',
      set: 'repeat',
      counted: 1,
    });
    const referenceBefore = setOf([50]);
    expect(
      controlledDifference({ before, after, referenceBefore, referenceAfter: repeat }, options),
    ).toMatchObject({ ok: false, set: 'reference-before' });
  });
});
