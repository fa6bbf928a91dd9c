import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { logReport } from '@standstill/workshop';
import { noise } from '../noise.testing.ts';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';
import { stopsLog } from '../stops-log.testing.ts';

const { folder, run } = realCommand();

function write(name: string, content: string | Uint8Array): string {
  writeFileSync(join(folder(), name), content);
  return name;
}

interface Stop {
  readonly applicationDistance_m: number;
  readonly distanceStandardError_m: number;
  readonly correctedDistance_m: number | null;
  readonly gateDistance_m: number | null;
  readonly entrySpeed_m_s: number;
}

function stopsIn(out: string): readonly Stop[] {
  const [report] = JSON.parse(out) as readonly { readonly kind: string; readonly stops: readonly Stop[] }[];
  expect(logReport.safeParse(report).error).toBeUndefined();
  return report?.stops ?? [];
}

describe('stops', () => {
  it('finds the stops that are in the log, and measures them', () => {
    const file = write('two.csv', stopsLog([8, 9]));
    const found = stopsIn(run('stops', file, '--speed', '60 mph', '--json').out);
    expect(found).toHaveLength(2);
    for (const [index, deceleration] of [8, 9].entries()) {
      const stop = found[index];
      expect(stop?.entrySpeed_m_s).toBeCloseTo(27, 1);
      const error = (stop?.applicationDistance_m ?? NaN) - 27 ** 2 / (2 * deceleration);
      expect(Math.abs(error)).toBeLessThan(1.96 * (stop?.distanceStandardError_m ?? NaN));
      expect(Math.abs(error)).toBeLessThan(1);
      expect(Math.abs((stop?.gateDistance_m ?? 0) - 26.8224 ** 2 / (2 * deceleration))).toBeLessThan(0.3);
    }
  });

  it('says the answer first, then the table, with units', () => {
    const { code, out, err } = run('stops', write('one.csv', stopsLog([8])), '--speed', '60 mph');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const lines = out.split('\n');
    expect(lines[0]).toMatch(/^one\.csv: 1 stop from 60 mph, \d+(?:\.\d)? ft corrected to that speed\.$/);
    expect(unbroken(out)).toMatch(
      /Stop 1 starts [\d.]+ s; from [\d.]+ mph; distance .* ft; to 60 mph .* ft; gate .* ft; time .* s; mean .* g; fully developed .* g; counts yes/,
    );
    expect(tooWide(out)).toEqual([]);
    expect(run('stops', 'one.csv').out.split('\n')[2]).toMatch(/^Stop +starts +from +distance +time +mean /);
    const metric = run('stops', 'one.csv', '--speed', '60 mph', '--units', 'metric').out;
    expect(metric).toMatch(/km\/h/);
    expect(metric).not.toMatch(/ ft\b/);
  });

  it('names the stop that was meant behind traffic stops, and the speed to correct it to', () => {
    const { out } = run('stops', write('traffic.csv', stopsLog([1.5, 2, 8.5])));
    const text = unbroken(out);
    expect(text).toMatch(
      /; 2 left out, see their reasons; the hardest that counts is stop 3, 0\.85 g from 60\.\d mph\. With --speed/,
    );
    expect(text).toContain('With --speed "60 mph" the distance of stop 3 is corrected to that speed.');
    expect(run('stops', 'traffic.csv', '--speed', '60 mph').out).not.toContain('With --speed "');
    const off = run('stops', 'traffic.csv', '--speed', '80 mph');
    expect(unbroken(off.out)).toMatch(
      /none fit to count; the hardest, stop 3: The entry speed is 75\.\d % of the nominal speed/,
    );
    expect(off.out).toContain('With --speed "60 mph" the distance of stop 3');
    expect(off.out).not.toMatch(/±|m\/s²/);
  });

  it('answers no where there is no stop', () => {
    const { code, out } = run('stops', write('cruise.csv', stopsLog([])));
    expect(code).toBe(1);
    expect(out).toMatch(/^cruise\.csv: no stop found/);
  });

  it.each([
    [
      'a log without time',
      'speed [km/h],brake\n50,0\n49,1\n48,1\n',
      /no column that tells the time.*--time-column/,
    ],
    [
      'a log without speed',
      'time [s],brake\n0,0\n1,1\n2,1\n',
      /no column that tells the speed.*--speed-column/,
    ],
    ['a speed without unit', 'time [s],speed\n0,50\n1,40\n2,30\n', /unit.*--speed-unit/],
    ['an empty file', '', /is empty/],
    ['noise', noise(300_000), /noise\.bin/],
  ])('refuses %s in one line', (_title, content, message) => {
    const { code, out, err } = run('stops', write('noise.bin', content));
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(err).toMatch(message);
  });

  it('takes a word on the columns', () => {
    const text = stopsLog([8]).replace('time [s],speed [m/s]', 'a,b');
    const file = write('plain.csv', text);
    const words = ['--time-column', 'a', '--speed-column', 'b', '--speed-unit', 'm/s'];
    const [stop] = stopsIn(run('stops', file, ...words, '--json').out);
    expect(stop?.entrySpeed_m_s).toBeCloseTo(27, 1);
    const [slow] = stopsIn(run('stops', file, ...words, '--speed-scale', '0.5', '--json').out);
    expect(slow?.entrySpeed_m_s).toBeCloseTo(13.5, 1);
    expect(run('stops', file, '--speed-unit', 'm/s')).toMatchObject({ code: 2, out: '' });
    expect(run('stops', file, ...words.slice(0, 4), '--speed-unit', 'kg').code).toBe(3);
    expect(run('stops', file, ...words, '--speed-scale', 'half').code).toBe(2);
    expect(run('stops', file, ...words, '--grade', '45 %').code).toBe(2);
  });

  it('tells the good logs where one is bad, and which is bad', () => {
    write('good.csv', stopsLog([8]));
    const { code, out, err } = run('stops', 'good.csv', 'gone.csv');
    expect(code).toBe(3);
    expect(out).toContain('good.csv: 1 stop');
    expect(err).toBe('gone.csv: there is no such file.\n');
    const asData = run('stops', 'good.csv', write('empty.csv', ''), '--json');
    expect((JSON.parse(asData.out) as readonly { kind: string }[]).map(({ kind }) => kind)).toEqual([
      'log-report',
      'log-refusal',
    ]);
  });
});

const real = join(repository, '../shared/logs');

describe.runIf(existsSync(real))('stops in real logs', () => {
  it('finds the emergency stop and takes the held values for what they are', () => {
    const found = stopsIn(
      run('stops', join(real, 'kit-obd/2017-08-07_Seat_Leon_RT_KA_Frei_Vollbremsung.csv'), '--json').out,
    );
    const emergency = found.find((stop) => stop.entrySpeed_m_s > 20);
    expect((emergency?.entrySpeed_m_s ?? 0) * 3.6).toBeCloseTo(77, 0);
    expect(Math.abs((emergency?.applicationDistance_m ?? 0) - 44.6)).toBeLessThan(5);
  });

  it.each([
    'kit-obd/2018-02-18_Stau_gap_trim.csv',
    'kit-obd/2017-07-13_Messfehler_trim.csv',
    'genivi/Silvretta-1_void_lowercase.nmea',
  ])('finds no stop in the trap %s', (file) => {
    const { code, out } = run('stops', join(real, file), '--json');
    expect(code).toBe(1);
    expect(stopsIn(out)).toEqual([]);
  });
});
