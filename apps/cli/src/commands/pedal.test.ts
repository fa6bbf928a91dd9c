import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { pedalReport, type PedalReport } from '@standstill/workshop';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';

const { folder, run } = realCommand();
const demo = join(repository, 'examples/hill-climb-coupe');
const few = ['--draws', '40'] as const;
const pushes = '4 lbf 1.6 in; 8 lbf 1.8 in; 20 lbf 2.0 in; 60 lbf 2.5 in; 100 lbf 2.9 in';

function reported(...words: string[]): PedalReport {
  const { code, out, err } = run('pedal', ...words, ...few, '--json');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return pedalReport.parse(JSON.parse(out));
}

beforeAll(() => {
  run('new', 'coupe.yaml');
});

describe('pedal', () => {
  it('answers in one sentence first, with every warning, in lines that fit', () => {
    const { code, out, err } = run('pedal', demo, ...few);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const result = reported(demo);
    expect(unbroken(out.split('\n\n')[0] ?? '')).toBe(unbroken(result.sentence));
    expect(tooWide(out)).toEqual([]);
    const text = unbroken(out);
    for (const { message } of result.warnings) expect(text).toContain(unbroken(message));
    expect(text).toContain('Never clamp a hose');
    expect(text).toMatch(/The front circuit lost .*The rear circuit lost .*Assist lost/);
  });

  it('finds the air that was put into the demo', () => {
    const { measured } = reported(demo);
    expect(measured?.air_m3.low).toBeLessThan(5e-6);
    expect(measured?.air_m3.high).toBeGreaterThan(5e-6);
  });

  it('takes force, set-up and pushes, typed or from a file, and says the same of both', () => {
    const typed = reported('coupe.yaml', '--pedal-force', '60 lbf', '--engine', 'off', '--measured', pushes);
    expect(typed.pedalForce_N).toBeCloseTo(266.89, 2);
    const rows = pushes.split('; ').map((push) => push.replace(/ lbf (\S+) in/, ',$1'));
    writeFileSync(join(folder(), 'points.csv'), `force (lbf),travel (in)\n${rows.join('\n')}\n`);
    const filed = reported(
      'coupe.yaml',
      '--pedal-force',
      '60 lbf',
      '--engine',
      'off',
      '--measured',
      'points.csv',
    );
    expect(filed.measured).toEqual(typed.measured);
    expect(reported('coupe.yaml', '--set-up', 'pads-only').setUp).toBe('pads-only');
    expect(reported('coupe.yaml').measured).toBeNull();
  });

  it('speaks metric where asked', () => {
    const { out } = run('pedal', 'coupe.yaml', ...few, '--units', 'metric');
    expect(out).toMatch(/ mm/);
    expect(out).not.toMatch(/\d (?:ft|psi|mph|lbf|in|inHg)\b/);
  });

  it.each([
    [['--measured', pushes], /^--measured needs --engine: /],
    [['--engine', 'off'], /^--engine needs --measured/],
    [
      ['--engine', 'off', '--measured', '20 lbf 1 in; 40 lbf 2 in'],
      /^--measured: the points: 2 points .*accepted is 4/,
    ],
    [
      ['--engine', 'off', '--measured', '20 lbf; 4 lbf 1 in'],
      /^--measured: point 1 is "20 lbf"; accepted is a push/,
    ],
    [['--pedal-force', '9 kN'], /^--pedal-force: 9 kN; accepted is 0\.01 kN to 2 kN/],
    [['--set-up', 'best'], /^--set-up: the job has no set-up "best"/],
  ] as const)('refuses %j in one line', (words, message) => {
    const { code, out, err } = run('pedal', 'coupe.yaml', ...words);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(message);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('says file and line of a mistake in a table, and that a file is not there', () => {
    writeFileSync(join(folder(), 'wrong.csv'), 'force (lbf),travel (in)\n4,1.6\n8,x\n20,2\n60,2.5\n');
    const wrong = run('pedal', 'coupe.yaml', '--engine', 'off', '--measured', 'wrong.csv');
    expect(wrong).toMatchObject({ code: 3, out: '' });
    expect(wrong.err).toMatch(/^wrong\.csv:3: point 2/);
    const gone = run('pedal', 'coupe.yaml', '--engine', 'off', '--measured', 'gone.csv');
    expect(gone).toMatchObject({ code: 3, out: '', err: 'gone.csv: there is no such file.\n' });
  });

  it('ends with no where too few pushes can be used', () => {
    const faint = '0.3 lbf 0.2 in; 0.4 lbf 0.25 in; 0.6 lbf 0.3 in; 40 lbf 2 in';
    const { code, err } = run('pedal', 'coupe.yaml', '--engine', 'off', '--measured', faint);
    expect(code).toBe(1);
    expect(err).toMatch(/^Measured pedal: 1 usable point .*Accepted are four or more/);
  });
});
