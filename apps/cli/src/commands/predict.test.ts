import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { comparison, prediction } from '@standstill/workshop';
import { noise } from '../noise.testing.ts';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';

const { folder, run } = realCommand();
const demo = join(repository, 'examples/hill-climb-coupe');
const few = ['--draws', '40'] as const;

interface Prediction {
  readonly kind: string;
  readonly sentence: string;
  readonly speed_m_s: number;
  readonly pedalForce_N: number;
  readonly setUps: readonly {
    readonly id: string;
    readonly distance_m: { readonly value: number; readonly low: number; readonly high: number };
  }[];
  readonly differences: readonly {
    readonly id: string;
    readonly against: string;
    readonly distance_m: { readonly value: number };
    readonly byPart: readonly { readonly distance_m: number }[];
  }[];
  readonly warnings: readonly { readonly severity: string; readonly message: string }[];
}

function predicted(...words: string[]): Prediction {
  const { code, out, err } = run('predict', ...words, ...few, '--json');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(prediction.safeParse(JSON.parse(out)).error).toBeUndefined();
  return JSON.parse(out) as Prediction;
}

beforeAll(() => {
  run('new', 'coupe.yaml');
});

describe('predict', () => {
  it('answers in one sentence first, dangers before the table, then the table with units', () => {
    const { code, out, err } = run('predict', demo, ...few);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const result = predicted(demo);
    expect(unbroken(out.split('\n\n')[0] ?? '')).toBe(unbroken(result.sentence));
    expect(tooWide(out)).toEqual([]);
    const text = unbroken(out);
    for (const { severity, message } of result.warnings) {
      const words = unbroken(message);
      expect(text).toContain(words);
      if (severity === 'danger')
        expect(text.indexOf(`DANGER: ${words}`)).toBeLessThan(text.indexOf('Stopping distance'));
      if (severity === 'note') expect(text.indexOf(words)).toBeGreaterThan(text.indexOf('Stopping distance'));
    }
    expect(text).toMatch(/\d+ values were assumed \(/);
  });

  it('makes a table of what fits, and stands set-ups below each other where they do not', () => {
    const one = run('predict', 'coupe.yaml', '--set-up', 'as-found', ...few).out;
    expect(one).toMatch(/^Stopping distance +\d+ \(\d+ to \d+\) ft$/m);
    expect(one).toMatch(/^Front line pressure +\d+ \(\d+ to \d+\) psi/m);
    const four = run('predict', demo, ...few).out;
    expect(four).toMatch(/^Four-wheel kit as sold\n {2}Stopping distance: \d+ \(\d+ to \d+\) ft$/m);
    expect(four.match(/^ {2}Front line pressure: \d+ \(\d+ to \d+\) psi$/gm)).toHaveLength(4);
  });

  it('lists the assumed values where asked, and speaks metric where asked', () => {
    expect(run('predict', 'coupe.yaml', ...few, '--assumed').out).toMatch(
      /values were assumed:\n {2}\S.*: ~/,
    );
    const { out } = run('predict', 'coupe.yaml', ...few, '--units', 'metric');
    expect(out).toMatch(/^ *Stopping distance:? +[\d.]+ \([\d.]+ to [\d.]+\) m/m);
    expect(out).not.toMatch(/\d (?:ft|psi|mph|lbf|in)\b/);
  });

  it('takes speed and pedal force in any unit, and only the set-ups asked for', () => {
    const slow = predicted(
      'coupe.yaml',
      '--speed',
      '30 mph',
      '--pedal-force',
      '400 N',
      '--set-up',
      'as-found',
    );
    expect(slow.speed_m_s).toBeCloseTo(13.4112, 9);
    expect(slow.pedalForce_N).toBe(400);
    expect(slow.setUps.map(({ id }) => id)).toEqual(['as-found']);
    const same = predicted(
      'coupe.yaml',
      '--speed',
      '48.28032 km/h',
      '--pedal-force',
      '400 N',
      '--set-up',
      'as-found',
    );
    const [ours, theirs] = [same, slow].map(({ setUps }) => setUps[0]?.distance_m.value ?? NaN);
    expect(Math.abs((ours ?? NaN) / (theirs ?? NaN) - 1)).toBeLessThan(1e-6);
    const fast = predicted(
      'coupe.yaml',
      '--speed',
      '60 mph',
      '--pedal-force',
      '400 N',
      '--set-up',
      'as-found',
    );
    expect(fast.setUps[0]?.distance_m.value).toBeGreaterThan(3 * (slow.setUps[0]?.distance_m.value ?? NaN));
  });

  it('sets every other set-up against the first, and the parts buy the whole', () => {
    const { setUps, differences } = predicted('coupe.yaml');
    const [first, ...others] = setUps.map(({ id }) => id);
    expect(differences.map(({ id, against }) => [id, against])).toEqual(others.map((id) => [id, first]));
    for (const { byPart, distance_m } of differences) {
      const sum = byPart.reduce((total, part) => total + part.distance_m, 0);
      expect(sum).toBeCloseTo(distance_m.value, 6);
    }
  });

  it('gives the same answer to the same seed and another interval to another', () => {
    const words = ['coupe.yaml', '--set-up', 'as-found', '--seed'];
    expect(predicted(...words, '7')).toEqual(predicted(...words, '7'));
    expect(predicted(...words, '7').setUps[0]?.distance_m).not.toEqual(
      predicted(...words, '8').setUps[0]?.distance_m,
    );
  });

  it('refuses a set-up that the job has not, and says which it has', () => {
    const { code, out, err } = run('predict', 'coupe.yaml', '--set-up', 'best');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe('--set-up: the job has no set-up "best"; it has as-found, pads-only.\n');
  });

  it('refuses a speed that no car has, in one line with what is accepted', () => {
    const { code, out, err } = run('predict', 'coupe.yaml', '--speed', '3000 mph');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe('--speed: 3000 mph; accepted is 2.24 mph to 268 mph.\n');
  });

  it('refuses a job with mistakes, one line each with its place', () => {
    const text = readFileSync(join(folder(), 'coupe.yaml'), 'utf8');
    writeFileSync(
      join(folder(), 'wrong.yaml'),
      text.replace('speed: 60 mph', 'speed: 60 mhp').replace('ratio: 4', 'ratio: x'),
    );
    const { code, out, err } = run('predict', 'wrong.yaml');
    expect({ code, out }).toEqual({ code: 3, out: '' });
    const lines = err.trimEnd().split('\n');
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line).toMatch(/^wrong\.yaml:\d+:\d+: /);
    writeFileSync(join(folder(), 'noise.yaml'), noise(50_000));
    const noisy = run('predict', 'noise.yaml');
    expect(noisy).toMatchObject({ code: 3, out: '' });
    expect(noisy.err.trimEnd().split('\n')).toHaveLength(1);
    expect(run('predict', 'gone.yaml')).toMatchObject({
      code: 3,
      out: '',
      err: 'gone.yaml: there is no such file.\n',
    });
  });
});

describe('compare with a job', () => {
  it('sets the measured change against the expected one, and says what else was different', () => {
    const words = ['compare', join(demo, 'before.csv'), join(demo, 'after.csv'), '--job', demo];
    const { code, out, err } = run(...words);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/Also different: tires: /);
    expect(out).toMatch(/Expected of \S+: .* ft/);
    const asData = run(...words, '--json').out;
    expect(comparison.safeParse(JSON.parse(asData)).error).toBeUndefined();
    const result = JSON.parse(asData) as {
      readonly expectation: { readonly setUp: string } | null;
    };
    expect(result.expectation?.setUp).toMatch(/^four-wheel-kit/);
    expect(run(...words, '--set-up', 'as-found')).toMatchObject({ code: 2, out: '' });
  });
});
