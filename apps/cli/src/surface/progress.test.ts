import { PassThrough } from 'node:stream';
import { expect, it } from 'vitest';
import { overwriting } from './terminal.ts';

it('progress is written over itself and leaves nothing behind', () => {
  const stream = new PassThrough();
  const show = overwriting(stream);
  show('50 of 100 draws');
  show('100 of 100 draws');
  show(null);
  const escape = String.fromCharCode(27);
  const [start, clear] = [`${escape}[1G`, `${escape}[0K`];
  expect(String(stream.read())).toBe(
    `${start}${clear}50 of 100 draws${start}${clear}100 of 100 draws${start}${clear}`,
  );
});
