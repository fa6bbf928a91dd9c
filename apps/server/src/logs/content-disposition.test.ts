import { expect, test } from 'vitest';
import { contentDisposition } from './content-disposition.ts';

test.each([
  ['before.csv', `attachment; filename="before.csv"; filename*=UTF-8''before.csv`],
  [
    'läuft "gut" 100%.csv',
    `attachment; filename="l_uft _gut_ 100_.csv"; filename*=UTF-8''l%C3%A4uft%20%22gut%22%20100%25.csv`,
  ],
  [`a'b(c)*.csv`, `attachment; filename="a'b(c)*.csv"; filename*=UTF-8''a%27b%28c%29%2A.csv`],
])('%s', (name, header) => {
  expect(contentDisposition(name)).toBe(header);
});
