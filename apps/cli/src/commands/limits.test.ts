import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { limitsReport } from '@standstill/workshop';
import type { LimitsReport } from '@standstill/workshop';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';

const { run } = realCommand();
const demo = join(repository, 'examples/hill-climb-coupe');
const few = ['--draws', '40', '--set-up', 'as-found', '--set-up', 'front-kit'] as const;

function limited(...words: string[]): LimitsReport {
  const { code, out, err } = run('limits', demo, ...few, ...words, '--json');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return limitsReport.parse(JSON.parse(out));
}

let report: LimitsReport;
beforeAll(() => {
  report = limited();
});

describe('limits', () => {
  it('answers in one sentence first, then where the feet go, what each part buys, and what to measure', () => {
    const { code, out, err } = run('limits', demo, ...few);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(unbroken(out.split('\n\n')[0] ?? '')).toBe(unbroken(report.sentence));
    expect(tooWide(out)).toEqual([]);
    const text = unbroken(out);
    const order = ['Where the feet go', 'buys (minus is shorter)', 'drawn once for both'];
    const places = order.map((words) => text.indexOf(words));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    for (const { measureNext } of [...report.setUps, ...report.differences])
      for (const { sentence } of measureNext) expect(text).toContain(unbroken(sentence));
  });

  it('takes speed, foot, seed and sampling, and speaks metric', () => {
    const asked = limited(
      '--speed',
      '80 km/h',
      '--pedal-force',
      '200 N',
      '--seed',
      '7',
      '--sampling',
      'sobol',
    );
    expect(asked).toMatchObject({ pedalForce_N: 200, seed: 7, sampling: 'sobol', draws: 40 });
    expect(asked.speed_m_s).toBeCloseTo(80 / 3.6, 9);
    const { out } = run('limits', demo, ...few, '--units', 'metric', '--sampling', 'sobol');
    expect(out).toContain('Sobol sequence');
    expect(out).toMatch(/\d m\b/);
    expect(out).not.toMatch(/\d ft\b/);
  });

  it('lists what was assumed where asked, and refuses what is not there', () => {
    const { out } = run('limits', demo, '--draws', '20', '--set-up', 'as-found', '--assumed');
    expect(out).toMatch(/\d+ values were assumed:/);
    const wrong = run('limits', demo, '--set-up', 'front-kti');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('no set-up "front-kti"');
    expect(run('limits', demo, '--sampling', 'dice').code).toBe(2);
  });
});
