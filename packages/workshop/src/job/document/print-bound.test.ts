import { parseQuantity } from '@standstill/units';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { printBound } from './print-bound.ts';

it('rounds into the range, and leaves a bound that three digits hold as it is', () => {
  expect(printBound(0.12, 'in', 'length', 'low')).toBe('4.73 in');
  expect(printBound(0.5, 'in', 'length', 'high')).toBe('19.6 in');
  expect(printBound(0.12, 'mm', 'length', 'low')).toBe('120 mm');
  expect(printBound(8000, 'kg', 'mass', 'high')).toBe('8000 kg');
  expect(printBound(-0.3, '%', 'ratio', 'low')).toBe('-30 %');
  expect(printBound(0, 'N', 'force', 'low')).toBe('0 N');
});

it('prints what is then accepted, in every unit', () => {
  const anyBound = fc.record({
    value: fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
    unit: fc.constantFrom('mm', 'in', 'ft', 'm', 'cm'),
    end: fc.constantFrom('low' as const, 'high' as const),
  });
  fc.assert(
    fc.property(anyBound, ({ value, unit, end }) => {
      const reading = parseQuantity(printBound(value, unit, 'length', end), 'length');
      if (!reading.ok) throw new Error('not readable');
      const over = reading.value / value - 1;
      expect(end === 'low' ? over : -over).toBeGreaterThan(-1e-8);
      expect(Math.abs(over)).toBeLessThan(0.011);
    }),
    { numRuns: 500 },
  );
});
