import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { commandsWith, runHere } from '../command-here.testing.ts';
import { soundJobText } from '../sound-job.testing.ts';

const folder = mkdtempSync(join(tmpdir(), 'standstill-bad-options-'));
const file = join(folder, 'job.yaml');
beforeAll(() => writeFileSync(file, soundJobText));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every command on a job that has the option. */
function each(option: string, values: readonly (readonly [value: string, line: string])[]) {
  return commandsWith(option, 'job').flatMap((command) =>
    values.map(([value, line]) => [command, option, value, line] as const),
  );
}

const speedWanted = 'a speed is wanted, e.g. "60 mph" or "100 km/h"';
const forceWanted = 'a force is wanted, e.g. "100 lbf" or "450 N"';

const speeds = each('--speed', [
  ['60', `--speed: "60" has no unit; ${speedWanted}.`],
  ['60 kg', `--speed: "60 kg" is a mass; ${speedWanted}.`],
  ['60 mhp', `--speed: "60 mhp": unknown unit "mhp"; did you mean "mph"?`],
  ['NaN', `--speed: "NaN" does not start with a number that can be read; ${speedWanted}.`],
  ['Infinity mph', `--speed: "Infinity mph" does not start with a number that can be read; ${speedWanted}.`],
  ['1e400 mph', `--speed: "1e400 mph" is not a finite number; ${speedWanted}.`],
  ['-60 mph', '--speed: -60 mph; accepted is 2.24 mph to 268 mph.'],
  ['0 km/h', '--speed: 0 km/h; accepted is 3.6 km/h to 432 km/h.'],
  ['3000 mph', '--speed: 3000 mph; accepted is 2.24 mph to 268 mph.'],
  ['', `--speed: nothing is written here; ${speedWanted}.`],
]);

const forces = each('--pedal-force', [
  ['90', `--pedal-force: "90" has no unit; ${forceWanted}.`],
  ['90 psi', `--pedal-force: "90 psi" is a pressure; ${forceWanted}.`],
  ['-90 lbf', '--pedal-force: -90 lbf; accepted is 2.25 lbf to 449 lbf.'],
  ['9000 N', '--pedal-force: 9000 N; accepted is 10 N to 2000 N.'],
  ['NaN N', `--pedal-force: "NaN N" does not start with a number that can be read; ${forceWanted}.`],
]);

const counts = [
  ...each('--draws', [
    ['many', '--draws: "many" is not a whole number from 20 to 100000.'],
    ['-5', '--draws: "-5" is not a whole number from 20 to 100000.'],
    ['1e9', '--draws: "1e9" is not a whole number from 20 to 100000.'],
  ]).filter(([command]) => command === 'predict'),
  ...each('--units', [
    [
      'imperial',
      "error: option '--units <system>' argument 'imperial' is invalid. Allowed choices are us, metric.",
    ],
  ]),
  ...each('--set-up', [['best', '--set-up: the job has no set-up "best"; it has as-found.']]),
];

describe('an option that makes no sense', () => {
  it.each([...speeds, ...forces, ...counts])('%s %s "%s"', async (command, option, value, line) => {
    const { code, out, err } = await runHere(command, file, option, value);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err.split('\n')[0]).toBe(line);
  });

  it('is refused where the command does not have it, with the nearest one', async () => {
    const { code, out, err } = await runHere('predict', file, '--sped', '60 mph');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain("unknown option '--sped'");
    expect(err).toContain('--speed');
  });
});
