import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { logRefusal, logReport } from '../results/log-report.ts';
import { distanceOf, logOf } from './log.testing.ts';
import { reportLog } from './report-log.ts';

const stops = [{ deceleration: 8 }, { deceleration: 8.4 }, { deceleration: 7.8 }];
const report = reportLog({ name: 'run.csv', content: logOf(stops) }, { nominalSpeed: 30 });
if (report.kind !== 'log-report') throw new Error(report.sentence);

describe('a log report', () => {
  it('is what its published schema says', () => {
    expect(logReport.parse(JSON.parse(JSON.stringify(report)))).toEqual(report);
  });

  it('finds the stops as they were driven', () => {
    expect(report.stops).toHaveLength(3);
    report.stops.forEach((stop, index) => {
      expect(stop.startBy).toBe('brake-switch');
      expect(stop.applicationDistance_m).toBeCloseTo(distanceOf(stops[index] ?? { deceleration: NaN }), 0);
      expect(stop.counted).toBe(true);
    });
  });

  it('starts with the answer', () => {
    expect(report.sentence).toMatch(
      /^run\.csv: 3 stops from 67\.1 mph, 19[01] to 20[45] ft corrected to that speed, mean 199 ft\.$/,
    );
  });

  it('speaks of distances as driven where no nominal speed is given', () => {
    const plain = reportLog({ name: 'run.csv', content: logOf(stops.slice(0, 1)) }, { units: 'metric' });
    expect(plain.sentence).toMatch(/^run\.csv: 1 stop from 108 km\/h, 6[01] m as driven\.$/);
    expect(plain).toMatchObject({ nominalSpeed_m_s: null });
  });

  it('leaves out what can not count, and says how many', () => {
    const mixed = reportLog(
      { name: 'run.csv', content: logOf([{ deceleration: 8 }, { speed: 22, deceleration: 8 }]) },
      { nominalSpeed: 30 },
    );
    expect(mixed.sentence).toMatch(/1 left out, see its reason\.$/);
    expect(mixed.kind === 'log-report' && mixed.stops.map(({ counted }) => counted)).toEqual([true, false]);
  });

  it('names the stop that a person meant where others come before it', () => {
    const traffic = [{ deceleration: 2 }, { deceleration: 8.2 }, { deceleration: 8.6 }];
    const found = reportLog({ name: 'run.csv', content: logOf(traffic) }, {});
    expect(found.sentence).toMatch(
      /^run\.csv: 2 stops .*; 1 left out, see its reason; the hardest that counts is stop 3, 0\.8\d g from 67\.1 mph\.$/,
    );
  });

  it('gives the reason of the hardest stop where none counts, in the units of the person', () => {
    const content = logOf([{ deceleration: 1.2 }, { deceleration: 2.5 }, { deceleration: 1.5 }]);
    const us = reportLog({ name: 'run.csv', content }, {});
    expect(us.sentence).toMatch(
      /^run\.csv: 3 stops found, none fit to count; the hardest, stop 2: A mean of 0\.25 g is a traffic stop, not a brake test \(under 0\.31 g\)\.$/,
    );
    const metric = reportLog({ name: 'run.csv', content }, { units: 'metric' });
    expect(metric.sentence).toContain('A mean of 2.4 m/s² is a traffic stop, not a brake test (under 3');
  });

  it('has no figure of the other units in any reason', () => {
    const content = logOf([
      { deceleration: 2.5 },
      { speed: 40, deceleration: 8 },
      { speed: 22, deceleration: 8 },
    ]);
    const found = reportLog({ name: 'run.csv', content }, { nominalSpeed: 30 });
    const reasons =
      found.kind === 'log-report' ? found.stops.flatMap(({ flags }) => flags.map((one) => one.reason)) : [];
    expect(reasons.length).toBeGreaterThan(2);
    expect(reasons.join('\n')).not.toMatch(/±|m\/s|km\/h|\d m\b/);
    expect(reasons.join('\n')).toContain('more than 7.5 mph over it');
  });

  it('says it where there is no stop', () => {
    const idle = 'time (s),speed (km/h)\n' + Array.from({ length: 500 }, (_, i) => `${i / 10},50`).join('\n');
    const none = reportLog({ name: 'cruise.csv', content: new TextEncoder().encode(idle) });
    expect(none.sentence).toBe(
      'cruise.csv: no stop found: the speed never falls from driving speed to rest under braking.',
    );
  });
});

describe('remembered columns', () => {
  const text = new TextDecoder().decode(logOf(stops)).replace('time (s),speed (km/h)', 'when,how fast');
  const content = new TextEncoder().encode(text);
  const columns = {
    time: { name: 'when', unit: 's' },
    speed: { name: 'how fast', unit: 'km/h' },
  };
  const remembered = [
    { headings: 'a | b', columns: { speed: { name: 'a' } } },
    { headings: 'when | how fast | brake switch', columns },
  ];

  it('make a log readable that was not, and say that a person chose them', () => {
    expect(reportLog({ name: 'run.csv', content }).kind).toBe('log-refusal');
    const found = reportLog({ name: 'run.csv', content }, { nominalSpeed: 30, remembered });
    if (found.kind !== 'log-report') throw new Error(found.sentence);
    expect(found.stops).toHaveLength(3);
    expect(found.headings).toBe('when | how fast | brake switch');
    expect(found.channels.find(({ name }) => name === 'how fast')).toMatchObject({
      quantity: 'speed',
      unitOrigin: 'given',
      chosenBy: 'person',
    });
  });

  it('are those of the same headings only, and give way to a word that is given now', () => {
    expect(reportLog({ name: 'run.csv', content }, { remembered: remembered.slice(0, 1) }).kind).toBe(
      'log-refusal',
    );
    const inMiles = { ...columns, speed: { name: 'how fast', unit: 'mph' } };
    const given = reportLog({ name: 'run.csv', content }, { remembered, columns: inMiles });
    if (given.kind !== 'log-report') throw new Error(given.sentence);
    expect(given.stops[0]?.entrySpeed_m_s).toBeCloseTo(30 * 1.609344, 1);
  });

  it('are found again in a log that is read piece by piece', () => {
    const pieces = {
      size: content.length,
      read: (from: number, length: number) => content.slice(from, from + length),
    };
    const found = reportLog({ name: 'run.csv', content: pieces }, { remembered });
    expect(found.kind).toBe('log-report');
    expect(found.source.bytes).toBe(content.length);
  });
});

describe('a log that can not be used', () => {
  it.each([
    ['without time', 'speed (km/h),rpm\n50,900\n40,800\n', 'log-no-time'],
    ['without speed', 'time (s),rpm\n0,900\n0.1,950\n', 'log-no-speed'],
    ['of nothing', '', 'log-empty'],
  ])('%s gets one sentence', (_name, text, code) => {
    const refused = reportLog({ name: 'x.csv', content: new TextEncoder().encode(text) });
    expect(logRefusal.parse(refused)).toMatchObject({ code, source: { name: 'x.csv', bytes: text.length } });
    expect(refused.sentence).toMatch(/^x\.csv [^\n]+\.$/);
  });
});

const realLogs = join(import.meta.dirname, '../../../../../shared/logs');

describe.skipIf(!existsSync(realLogs))('real logs (skipped where the folder is absent)', () => {
  const files = existsSync(realLogs)
    ? readdirSync(realLogs, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile())
    : [];

  it('each become a report or a refusal that fits its schema, with one sentence', () => {
    const kinds = files.map((entry) => {
      const content = readFileSync(join(entry.parentPath, entry.name));
      const result = reportLog({ name: entry.name, content }, { nominalSpeed: 22.352 });
      const back: unknown = JSON.parse(JSON.stringify(result));
      expect(result.kind === 'log-report' ? logReport.parse(back) : logRefusal.parse(back)).toEqual(result);
      expect(result.sentence).not.toMatch(/\n|undefined|NaN/);
      return result.kind;
    });
    expect(kinds).toContain('log-report');
    expect(kinds).toContain('log-refusal');
  });
});
