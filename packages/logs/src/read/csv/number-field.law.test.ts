import fc from 'fast-check';
import { expect, test } from 'vitest';
import { numberField } from './number-field.ts';

test('a plain decimal gives the same bits as the language reads it', () => {
  const digits = fc.stringMatching(/^-?\d{1,12}(\.\d{0,10})?$/);
  fc.assert(
    fc.property(digits, (text) => {
      expect(Object.is(numberField(text, false), Number(text))).toBe(true);
      expect(Object.is(numberField(text.replace('.', ','), true), Number(text))).toBe(true);
    }),
    { numRuns: 5000, seed: 7 },
  );
});
