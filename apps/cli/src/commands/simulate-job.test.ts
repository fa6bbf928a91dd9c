import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { simulationReport } from '@standstill/workshop';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';

const { run } = realCommand();
const demo = join(repository, 'examples/hill-climb-coupe');
const few = ['--draws', '20', '--set-up', 'as-found', '--set-up', 'front-kit'] as const;

describe('simulate', () => {
  it('answers in words first, then the stops side by side and where the energy went', () => {
    const { code, out, err } = run('simulate', demo, ...few);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const report = simulationReport.parse(JSON.parse(run('simulate', demo, ...few, '--json').out));
    expect(unbroken(out.split('\n\n')[0] ?? '')).toBe(unbroken(report.sentence));
    expect(tooWide(out)).toEqual([]);
    for (const words of [
      'Stopping distance',
      'by the quick stop of predict',
      '(minus is shorter)',
      'Where the energy went',
    ])
      expect(out).toContain(words);
  });

  it('keeps a foot down, or seeks a deceleration', () => {
    const locked = run('simulate', demo, '--draws', '20', '--set-up', 'as-found', '--locked-wheels');
    expect(unbroken(locked.out)).toContain('held down whatever locks');
    const sought = run('simulate', demo, '--draws', '20', '--set-up', 'as-found', '--deceleration', '0.4 g');
    expect(unbroken(sought.out)).toContain('foot seeking 0.4 g');
  });

  it('refuses what it cannot do, in one line', () => {
    const wordless = run('simulate', demo, '--trace');
    expect(wordless).toMatchObject({ code: 2, out: '' });
    expect(wordless.err).toContain('--trace goes with --json');
    const unit = run('simulate', demo, '--deceleration', '5 kg');
    expect(unit.code).toBe(2);
    expect(unit.err).toContain('--deceleration');
  });
});
