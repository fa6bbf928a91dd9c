import { join } from 'node:path';
import { balanceReport } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';

const { run } = realCommand();
const demo = join(repository, 'examples/hill-climb-coupe');
const few = ['--draws', '20'] as const;

describe('balance', () => {
  it('answers in one sentence first, then dangers, the yardstick, the tables', () => {
    const { code, out, err } = run('balance', demo, ...few);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const json = run('balance', demo, ...few, '--json');
    const result = balanceReport.parse(JSON.parse(json.out));
    const [first] = out.split('\n\n');
    expect(unbroken(first ?? '')).toBe(unbroken(result.sentence));
    expect(tooWide(out)).toEqual([]);
    const text = unbroken(out);
    expect(text.indexOf(unbroken(result.annexSentence))).toBeGreaterThan(0);
    expect(text.indexOf(unbroken(result.annexSentence))).toBeLessThan(text.indexOf('Axle that locks first'));
    for (const { severity, message } of result.warnings) {
      expect(text).toContain(unbroken(message));
      if (severity === 'danger')
        expect(text.indexOf(`DANGER: ${unbroken(message)}`)).toBeLessThan(
          text.indexOf('Axle that locks first'),
        );
    }
    expect(result.setUps[0]?.states.map(({ state }) => state)).toEqual(['as-tested', 'laden']);
  });

  it('looks at one state of load where one is asked for, in metric units', () => {
    const { out } = run('balance', demo, ...few, '--laden', '--set-up', 'as-found', '--units', 'metric');
    expect(out).toContain('m/s² laden');
    expect(out).not.toContain('As tested');
    const { setUps } = balanceReport.parse(
      JSON.parse(run('balance', demo, ...few, '--unladen', '--set-up', 'as-found', '--json').out),
    );
    expect(setUps[0]?.states.map(({ state }) => state)).toEqual(['as-tested']);
  });

  it('names a set-up that is not there', () => {
    const { code, err } = run('balance', demo, '--set-up', 'nothing');
    expect(code).toBe(2);
    expect(err).toContain('the job has no set-up "nothing"');
  });
});
