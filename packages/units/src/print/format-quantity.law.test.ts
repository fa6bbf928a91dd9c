import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatQuantity } from './format-quantity.ts';
import { printNumber } from './print-number.ts';

test('the print is the nearest number of its last place, and the interval is at least as wide as that place', () => {
  const size = fc.double({ min: -8, max: 8, noNaN: true }).map((power) => 10 ** power);
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), size, (value, interval) => {
      const text = formatQuantity(value, 'm', 'length', { interval });
      const printed = Number(text.replace(' m', ''));
      const firstDigit = 10 ** Math.floor(Math.log10(interval * (1 + 1e-9)));
      expect(Math.abs(printed - value)).toBeLessThanOrEqual(0.51 * firstDigit + 1e-12 * Math.abs(value));
      const place = lastPlaceOf(text);
      expect(place).toBeGreaterThanOrEqual(0.0999 * firstDigit);
    }),
    { numRuns: 3000 },
  );
});

/** Size of the last printed digit; zeros at the end of a whole number do not count as digits here. */
function lastPlaceOf(text: string): number {
  const [, whole = '', decimals, exponent = '0'] =
    /^-?(\d+)(?:\.(\d+))?(?:e([+-]?\d+))? m$/u.exec(text) ?? [];
  if (/^0*$/u.test(whole + (decimals ?? ''))) return Infinity;
  const zeros = decimals === undefined ? /0*$/u.exec(whole)![0].length : -decimals.length;
  return 10 ** (zeros + Number(exponent));
}

test('a printed number is within half of its last place of the number', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e12, max: 1e12, noNaN: true }),
      fc.integer({ min: -9, max: 9 }),
      (number, place) => {
        const printed = Number(printNumber(number, place));
        const rounding = 1e-15 * Math.abs(number);
        expect(Math.abs(printed - number)).toBeLessThanOrEqual(0.5 * 10 ** place * (1 + 1e-9) + rounding);
      },
    ),
    { numRuns: 3000 },
  );
});
