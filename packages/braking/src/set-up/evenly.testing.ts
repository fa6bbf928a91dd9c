import fc from 'fast-check';

/** Numbers spread evenly over a range: `fc.double` gives mostly numbers near its ends and near zero. */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((step) => min + ((max - min) * step) / 1_000_000);
}
