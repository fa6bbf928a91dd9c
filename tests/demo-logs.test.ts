import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const maker = fileURLToPath(new URL('../examples/hill-climb-coupe/make-logs.mjs', import.meta.url));

it('the demo logs are what the model makes now', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [maker, '--check'], { encoding: 'utf8' });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout).toContain('are what the model makes now');
});
