import { once } from 'node:events';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { realCommand, repository, startCommand } from '../standstill.testing.ts';
import { wantsColor } from './terminal.ts';

const { folder } = realCommand();

it.each([
  [{}, true, true],
  [{}, false, false],
  [{ NO_COLOR: '1' }, true, false],
  [{ NO_COLOR: '1', FORCE_COLOR: '1' }, true, false],
  [{ NO_COLOR: '' }, true, true],
  [{ FORCE_COLOR: '1' }, false, true],
  [{ TERM: 'dumb' }, true, false],
  [{ CI: '1' }, false, false],
])('with %o and a terminal %s: color %s', (environment, isTerminal, color) => {
  expect(wantsColor(environment, isTerminal)).toBe(color);
});

it('ends quietly where the reader has seen enough', async () => {
  const log = join(repository, 'examples/hill-climb-coupe/before.csv');
  const child = startCommand(folder(), ['stops', log, '--json']);
  let complaints = '';
  child.stderr?.on('data', (text) => (complaints += String(text)));
  child.stdout?.once('data', () => child.stdout?.destroy());
  const [code] = (await once(child, 'exit')) as [number];
  expect({ code, complaints }).toEqual({ code: 0, complaints: '' });
});
