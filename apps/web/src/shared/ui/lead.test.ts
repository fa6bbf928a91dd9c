import { expect, test } from 'vitest';
import { sentences } from './lead.tsx';

test.each([
  ['One. Two.', ['One.', 'Two.']],
  [
    'At 0.79 g instead of 0.92 g: front first. Then more.',
    ['At 0.79 g instead of 0.92 g: front first.', 'Then more.'],
  ],
  ['before.csv: 7 stops.', ['before.csv: 7 stops.']],
  ['Only one', ['Only one']],
])('%s', (text, parts) => {
  expect(sentences(text)).toEqual(parts);
});
