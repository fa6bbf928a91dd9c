import { expect, test } from 'vitest';
import type { Dimension } from '../dimension/dimension.ts';
import { parseQuantity } from './parse-quantity.ts';
import { refusalSentence } from './refusal-sentence.ts';

function sentence(text: string, dimension: Dimension): string {
  const reading = parseQuantity(text, dimension);
  if (reading.ok) throw new Error(`${text} was read`);
  return refusalSentence(reading);
}

test('each refusal is one line that says what is wanted', () => {
  expect(sentence('14 in', 'pressure')).toBe(
    '"14 in" is a length; a pressure is wanted, e.g. "145 psi" or "10 bar"',
  );
  expect(sentence('94 inn', 'length')).toBe('"94 inn": unknown unit "inn"; did you mean "in"?');
  expect(sentence('94', 'length')).toBe('"94" has no unit; a length is wanted, e.g. "14 in" or "355 mm"');
  expect(sentence('', 'speed')).toBe(
    'nothing is written here; a speed is wanted, e.g. "60 mph" or "100 km/h"',
  );
  expect(sentence('fast', 'speed')).toContain('does not start with a number');
  expect(sentence('1.300,5 kg', 'mass')).toContain('can be read in two ways');
  expect(sentence('1e999 kg', 'mass')).toContain('is not a finite number');
  expect(sentence('9 wobbles', 'mass')).toBe(
    '"9 wobbles": unknown unit "wobbles"; a mass is wanted, e.g. "2900 lb" or "1315 kg"',
  );
});

test('a page of noise still makes one short line', () => {
  const line = sentence(`7 ${'noise\n'.repeat(5000)}`, 'mass');
  expect(line).not.toContain('\n');
  expect(line.length).toBeLessThan(220);
});
