import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';
import { stopsLog } from '../stops-log.testing.ts';

const { folder, run } = realCommand();

function write(name: string, content: string): string {
  writeFileSync(join(folder(), name), content);
  return name;
}

interface Comparison {
  readonly kind: string;
  readonly definition: string;
  readonly before: { readonly count: number; readonly mean_m: { readonly value: number } };
  readonly after: { readonly count: number; readonly mean_m: { readonly value: number } };
  readonly difference_m: { readonly value: number; readonly low: number; readonly high: number };
}

beforeAll(() => {
  write('before.csv', stopsLog([7.9, 8.0, 8.1, 8.05]));
  write('after.csv', stopsLog([8.9, 9.0, 9.1, 9.05]));
  write('after-more.csv', stopsLog([9.0, 8.95]));
  write('single.csv', stopsLog([8]));
});

describe('compare', () => {
  it('gives back the difference that is in the logs, inside its interval', () => {
    const { code, out, err } = run('compare', 'before.csv', 'after.csv', '--speed', '60 mph', '--json');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const result = JSON.parse(out) as Comparison;
    const true_m = (26.8224 ** 2 / 2) * (1 / 9.0125 - 1 / 8.0125);
    expect(result).toMatchObject({
      kind: 'comparison',
      definition: 'application',
      before: { count: 4 },
      after: { count: 4 },
    });
    expect(result.difference_m.low).toBeLessThan(true_m);
    expect(result.difference_m.high).toBeGreaterThan(true_m);
    expect(Math.abs(result.difference_m.value - true_m)).toBeLessThan(0.4);
  });

  it('says the answer first, then the sets, then how sure it is', () => {
    const { out } = run('compare', 'before.csv', 'after.csv', '--speed', '60 mph');
    const lines = out.split('\n');
    expect(lines[0]).toMatch(/ft/);
    const text = unbroken(out);
    expect(text).toMatch(/before \(before\.csv\) .*4;? .*?[\d.]+ \([\d.]+ to [\d.]+\) ft/);
    expect(text).toMatch(/After minus before: −\d+.* ft/);
    expect(text).toMatch(/shuffling the stops/);
    expect(text).toMatch(/Best against best would claim \d+ ft shorter/);
    expect(tooWide(out)).toEqual([]);
    expect(out).not.toMatch(/ m\b/);
  });

  it('takes several logs a side, with commas or by repeating, and both definitions', () => {
    const commas = run('compare', 'before.csv', 'after.csv,after-more.csv', '--speed', '60 mph', '--json');
    const repeated = run(
      'compare',
      'before.csv',
      'after.csv',
      '--after',
      'after-more.csv',
      '--speed',
      '60 mph',
      '--json',
    );
    expect((JSON.parse(commas.out) as Comparison).after.count).toBe(6);
    expect(repeated.out).toBe(commas.out);
    const gate = run(
      'compare',
      'before.csv',
      'after.csv',
      '--speed',
      '60 mph',
      '--definition',
      'gate',
      '--json',
    );
    expect((JSON.parse(gate.out) as Comparison).definition).toBe('gate');
  });

  it('answers no in one line where a set is too small or has no stop', () => {
    for (const words of [
      ['single.csv', 'after.csv'],
      ['before.csv', write('cruise.csv', stopsLog([]))],
    ]) {
      const { code, out, err } = run('compare', ...words, '--speed', '60 mph');
      expect({ code, out }).toEqual({ code: 1, out: '' });
      expect(err.trimEnd().split('\n')).toHaveLength(1);
      expect(err).toMatch(/at least two/);
    }
    const asData = run('compare', 'single.csv', 'after.csv', '--json');
    expect(JSON.parse(asData.out)).toMatchObject({ kind: 'comparison-refusal' });
  });

  it('refuses a log that it can not read, and a wish that does not fit', () => {
    expect(run('compare', 'before.csv', 'gone.csv')).toMatchObject({ code: 3, out: '' });
    expect(run('compare', 'before.csv', write('empty.csv', ''))).toMatchObject({ code: 3, out: '' });
    expect(run('compare', 'before.csv', 'after.csv', '--set-up', 'kit')).toMatchObject({ code: 2, out: '' });
    expect(run('compare', 'before.csv', 'after.csv', '--definition', 'best')).toMatchObject({
      code: 2,
      out: '',
    });
    expect(run('compare', 'before.csv', 'after.csv', '--job', 'gone.yaml')).toMatchObject({
      code: 3,
      out: '',
    });
  });

  it('refuses a log on both sides, under whatever name', () => {
    write('copy.csv', readFileSync(join(folder(), 'before.csv'), 'utf8'));
    for (const after of ['before.csv', 'copy.csv']) {
      const { code, out, err } = run('compare', 'before.csv', after, '--speed', '60 mph');
      expect({ code, out }).toEqual({ code: 1, out: '' });
      expect(err).toMatch(/in two sets: a set held against itself shows nothing/);
    }
  });

  it('names four stops a set at least, and what they do not tell', () => {
    const { out } = run('compare', 'before.csv', 'after.csv', '--speed', '60 mph');
    expect(unbroken(out)).toMatch(
      /: 4 stops a set\. That is against scatter only: .* drive the old set-up again\./,
    );
  });

  it('warns first where the job knows the log as one of another set-up', () => {
    const demo = join(repository, 'examples/hill-climb-coupe');
    const words = ['compare', join(demo, 'before.csv'), join(demo, 'after.csv'), '--job', demo] as const;
    const { code, out } = run(...words, '--set-up', 'front-kit', '--json');
    const { warnings, sentence } = JSON.parse(out) as { warnings: readonly string[]; sentence: string };
    expect(code).toBe(0);
    expect(warnings[0]).toMatch(
      /^The job says that after\.csv \(run "after"\) was driven with "four-wheel-kit-with-valve", not with "front-kit"/,
    );
    expect(sentence).toMatch(
      /^From 60 mph the car now stops 20 to 26 ft shorter, but the tires were changed and the day was different too; /,
    );
    const right = JSON.parse(run(...words, '--json').out) as { warnings: readonly string[] };
    expect(right.warnings.join('\n')).not.toMatch(/was driven with/);
  });

  it('gives the same answer twice', () => {
    const words = ['compare', 'before.csv', 'after.csv', '--speed', '60 mph', '--json'] as const;
    expect(run(...words).out).toBe(run(...words).out);
  });
});
