import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { realCommand, repository } from './standstill.testing.ts';

const { run } = realCommand(repository);
const page = readFileSync(join(repository, 'README.md'), 'utf8');
const shown = [...page.matchAll(/^\$ npx standstill (.+)\n((?:[^`\n].*\n)+)/gm)].map(
  ([, words = '', answer = '']) => ({ words, answer: answer.trimEnd() }),
);

it('shows commands with their answers', () => {
  expect(shown.length).toBeGreaterThanOrEqual(2);
});

it.each(shown)('the README gives the real answer to $words', ({ words, answer }) => {
  const { code, out } = run(...wordsOf(words));
  expect(code).toBe(0);
  expect(out.split('\n\n')[0]).toBe(answer);
});

function wordsOf(line: string): readonly string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
}
