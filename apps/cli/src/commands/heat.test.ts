import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { heatReport } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';

const { folder, run } = realCommand();
const demo = join(repository, 'examples/hill-climb-coupe');
const few = ['--draws', '20', '--set-up', 'as-found'] as const;

describe('heat', () => {
  it('answers first, in a width that fits, with a row for every stop', () => {
    const { code, out, err } = run('heat', demo, ...few);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^As found: the front pads get too hot first \(they fade at 760 °F\) in stop \d/);
    expect(unbroken(out)).toMatch(/Headroom: \d+ \(\d+ to \d+\) such stops before something is too hot/);
    expect(out.match(/^\d+: 60 mph to 0 mph/gm)).toHaveLength(8);
    expect(tooWide(out)).toEqual([]);
  });

  it('prints for programs what its schema says', () => {
    const { out } = run('heat', demo, ...few, '--schedule', 'heating-snubs', '--json');
    const found = heatReport.parse(JSON.parse(out));
    expect([found.schedule, found.setUps[0]?.stops.length]).toEqual(['heating-snubs', 15]);
    const schema = run('schema', 'heat-report');
    expect(JSON.parse(schema.out)).toMatchObject({ title: 'Standstill heat-report' });
    const kept = readFileSync(join(repository, 'schemas/heat-report.schema.json'), 'utf8');
    expect(JSON.parse(kept)).toEqual(JSON.parse(schema.out));
  });

  it('drives the laps of a table and of typed points alike', () => {
    writeFileSync(join(folder(), 'laps.csv'), 'from (mph), to (mph), next (s)\n75, 30, 22\n60, 25, 18\n');
    const file = run('heat', demo, ...few, '--points', 'laps.csv', '--count', '2');
    const typed = run(
      'heat',
      demo,
      ...few,
      '--points',
      '75 mph, 30 mph, 22 s; 60 mph, 25 mph, 18 s',
      '--count',
      '2',
    );
    expect(file.code).toBe(0);
    expect(file.out).toBe(typed.out);
    expect(unbroken(file.out)).toContain('2 laps of 2 braking points');
  });

  it('comes in metric units', () => {
    const { out } = run(
      'heat',
      demo,
      ...few,
      '--schedule',
      'descent',
      '--drop',
      '400 m',
      '--units',
      'metric',
    );
    expect(unbroken(out)).toContain('a descent of 400 m at 8 % and 50 km/h');
    expect(out).not.toMatch(/°F|mph/);
  });

  it.each([
    [['--schedule', 'burnish', '--drop', '300 ft'], '--drop means nothing for the schedule burnish.'],
    [['--schedule', 'laps'], 'the schedule laps needs --points'],
    [['--points', '75 mph, 80 mph, 22 s'], '--points: point 1 does not get slower.'],
    [['--count', '0'], '--count: "0" is not a whole number from 1 to 200.'],
    [['--interval', '45 mph'], '--interval:'],
  ])('%s is refused', (words, message) => {
    const { code, out, err } = run('heat', demo, ...words);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(unbroken(err)).toContain(message);
  });

  it('names the line of a bad table', () => {
    writeFileSync(join(folder(), 'bad.csv'), 'from (mph), to (mph), next (s)\n75, 90, 22\n');
    const { code, err } = run('heat', demo, '--points', 'bad.csv');
    expect(code).toBe(3);
    expect(err).toMatch(/bad\.csv:2/);
  });
});
