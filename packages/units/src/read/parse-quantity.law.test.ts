import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromUnit } from '../convert/from-unit.ts';
import { dimensions } from '../dimension/dimensions.ts';
import { formatQuantity } from '../print/format-quantity.ts';
import { everyUnit } from '../table/every-unit.testing.ts';
import { parseQuantity } from './parse-quantity.ts';
import { refusalSentence } from './refusal-sentence.ts';

const anyUnit = fc.constantFrom(...everyUnit);
const number = fc.double({ min: -1e9, max: 1e9, noNaN: true });
const anyDimension = fc.constantFrom(...dimensions);

function valueOf(text: string, dimension: (typeof dimensions)[number]): number {
  const reading = parseQuantity(text, dimension);
  expect(reading, `reading ${text}`).toMatchObject({ ok: true });
  return reading.ok ? reading.value : Number.NaN;
}

test('what is printed with all its digits reads back as the same value', () => {
  fc.assert(
    fc.property(anyUnit, number, ({ dimension, unit }, original) => {
      const value = fromUnit(original, unit.symbol, dimension);
      const text = formatQuantity(value, unit.symbol, dimension, { significantDigits: 17 });
      const size = Math.max(Math.abs(value), Math.abs((unit.zero * unit.times) / unit.over));
      expect(Math.abs(valueOf(text, dimension) - value), `reading ${text}`).toBeLessThanOrEqual(1e-14 * size);
    }),
    { numRuns: 5000 },
  );
});

test('every spelling of every unit gives the same value', () => {
  for (const { dimension, unit } of everyUnit) {
    const expected = fromUnit(7.25, unit.symbol, dimension);
    const spellings = [unit.symbol, ...unit.spellings].filter((spelling) => spelling !== '1');
    for (const spelling of spellings) {
      expect(valueOf(`7.25 ${spelling}`, dimension), `reading ${spelling}`).toBe(expected);
    }
  }
});

test('spaces and the kind of minus never change a value', () => {
  const space = fc.constantFrom(' ', '', '\u00a0', '\u202f', '  ', '\t');
  const minus = fc.constantFrom('-', '−', '–');
  fc.assert(
    fc.property(
      anyUnit,
      fc.integer({ min: 1, max: 99_999 }),
      space,
      minus,
      ({ dimension, unit }, count, gap, sign) => {
        const spelled = unit.symbol === '1' ? '' : unit.symbol;
        const text = `${sign}${gap}${count / 100}${gap}${spelled}`;
        expect(valueOf(text, dimension), `reading ${text}`).toBe(
          fromUnit(-count / 100, unit.symbol, dimension),
        );
      },
    ),
  );
});

test('fractions read as what they are', () => {
  const part = fc.integer({ min: 1, max: 64 });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40 }), part, part, (whole, top, bottom) => {
      const text = whole === 0 ? `${top}/${bottom} in` : `${whole} ${top}/${bottom} in`;
      expect(valueOf(text, 'length')).toBe(fromUnit(whole + top / bottom, 'in', 'length'));
    }),
  );
});

test('thousands commas and spaces change nothing', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1000, max: 999_999_999 }), (count) => {
      const grouped = count.toLocaleString('en-US');
      expect(valueOf(`${grouped} kg`, 'mass')).toBe(count);
      expect(valueOf(`${grouped.replaceAll(',', ' ')} kg`, 'mass')).toBe(count);
      expect(valueOf(`${grouped}.5 kg`, 'mass')).toBe(count + 0.5);
    }),
  );
});

test('no text at all makes the reader fail: it reads, or refuses in one line', () => {
  const pieces = fc.constantFrom(
    '1',
    '0',
    ',',
    '.',
    ' ',
    '/',
    '-',
    '−',
    'e',
    'in',
    '"',
    "'",
    '%',
    'N·m',
    '°',
    '½',
    '²',
    '(',
    '\n',
    'kPa',
    '\u00a0',
  );
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(pieces, { maxLength: 12 }).map((all) => all.join('')),
  );
  fc.assert(
    fc.property(text, anyDimension, (written, dimension) => {
      const reading = parseQuantity(written, dimension);
      if (reading.ok) expect(Number.isFinite(reading.value)).toBe(true);
      else expect(refusalSentence(reading)).toMatch(/^[^\n]{10,300}$/u);
    }),
    { numRuns: 5000 },
  );
});
