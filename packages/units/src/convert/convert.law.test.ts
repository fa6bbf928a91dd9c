import fc from 'fast-check';
import { expect, test } from 'vitest';
import { everyUnit } from '../table/every-unit.testing.ts';
import { fromUnit } from './from-unit.ts';
import { toUnit } from './to-unit.ts';
import { UnknownUnitError } from './unknown-unit-error.ts';

const anyUnit = fc.constantFrom(...everyUnit);
/** Zero and both signs from 1e-12 to 1e9; smaller than that, doubles themselves lose digits in the end. */
const number = fc.double({ min: -1e9, max: 1e9, noNaN: true }).filter((x) => x === 0 || Math.abs(x) >= 1e-12);

test('there and back gives the same number to 14 digits, for every unit', () => {
  fc.assert(
    fc.property(anyUnit, number, ({ dimension, unit }, original) => {
      const back = toUnit(fromUnit(original, unit.symbol, dimension), unit.symbol, dimension);
      const size = Math.max(Math.abs(original), Math.abs(unit.zero));
      expect(Math.abs(back - original)).toBeLessThanOrEqual(1e-14 * size);
    }),
    { numRuns: 5000 },
  );
});

test('a quantity does not depend on the unit that it passed through, to 14 digits', () => {
  fc.assert(
    fc.property(anyUnit, anyUnit, number, (first, second, original) => {
      fc.pre(first.dimension === second.dimension && first.dimension !== 'temperature');
      const value = fromUnit(original, first.unit.symbol, first.dimension);
      const other = toUnit(value, second.unit.symbol, first.dimension);
      const again = fromUnit(other, second.unit.symbol, first.dimension);
      expect(Math.abs(again - value)).toBeLessThanOrEqual(1e-14 * Math.abs(value));
    }),
    { numRuns: 1000 },
  );
});

test('a unit of another dimension is never converted', () => {
  expect(() => fromUnit(1, 'psi', 'length')).toThrow(UnknownUnitError);
  expect(() => toUnit(1, 'inn', 'length')).toThrow(UnknownUnitError);
});
