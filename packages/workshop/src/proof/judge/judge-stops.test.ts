import { describe, expect, it } from 'vitest';
import { logReport } from '../../results/log-report.ts';
import type { LogReport } from '../../results/log-report.ts';
import { logOf } from '../log.testing.ts';
import { reportLog } from '../report-log.ts';
import type { GivenJudgement } from './given-judgement.ts';

/** Three hard stops from 30 m/s, and one from 22 m/s that its flags exclude. */
const content = logOf([
  { deceleration: 8 },
  { deceleration: 8.4 },
  { deceleration: 7.8 },
  { speed: 22, deceleration: 8 },
]);

function judged(...judgements: readonly GivenJudgement[]): LogReport {
  const report = reportLog({ name: 'run.csv', content }, { nominalSpeed: 30, judgements });
  if (report.kind !== 'log-report') throw new Error(report.sentence);
  return report;
}

const plain = judged();
const during = (number: number): number => {
  const stop = plain.stops[number - 1];
  return ((stop?.start_s ?? NaN) + (stop?.end_s ?? NaN)) / 2;
};
const counted = (report: LogReport): readonly boolean[] => report.stops.map((stop) => stop.counted);
const told = (report: LogReport): readonly string[] =>
  report.issues.map(({ code, message }) => `${code}: ${message}`);

describe('a judgement', () => {
  it('rejects the stop that was under way at its moment, which stays in the report', () => {
    const report = judged({ at: during(2), verdict: 'rejected', reason: 'A dog.', by: 'Ann' });
    expect(counted(plain)).toEqual([true, true, true, false]);
    expect(counted(report)).toEqual([true, false, true, false]);
    expect(report.stops[1]?.judgement).toEqual({
      verdict: 'rejected',
      reason: 'A dog.',
      by: 'Ann',
      date: null,
    });
    expect(report.stops[1]?.applicationDistance_m).toBe(plain.stops[1]?.applicationDistance_m);
    expect(report.sentence).toMatch(/^run\.csv: 2 stops .*; 2 left out, see their reasons/);
    expect(told(report)).toEqual(told(plain));
    expect(logReport.parse(JSON.parse(JSON.stringify(report)))).toEqual(report);
  });

  it('restores a stop that flags leave out', () => {
    const report = judged({ at: during(4), verdict: 'restored', reason: 'The speedometer reads low.' });
    expect(counted(report)).toEqual([true, true, true, true]);
    expect(report.stops[3]?.flags.map(({ code }) => code)).toContain('speed-off-nominal');
  });

  it('does not restore a stop that no car can make, and says why', () => {
    const impossible = logOf([{ deceleration: 8 }, { deceleration: 8 }, { deceleration: 25 }]);
    const report = reportLog(
      { name: 'run.csv', content: impossible },
      { judgements: [{ at: 33.5, verdict: 'restored', reason: 'It was that good.' }] },
    );
    if (report.kind !== 'log-report') throw new Error(report.sentence);
    const stop = report.stops.at(-1);
    expect(stop?.start_s).toBeLessThan(33.5);
    expect(stop?.end_s).toBeGreaterThan(33.5);
    expect([stop?.judgement?.verdict, stop?.counted]).toEqual(['restored', false]);
    expect(told(report).at(-1)).toMatch(
      /^not-restored: Stop 3 stays left out\. .* It can't be restored by hand, because the recorded speed is not the car's\.$/,
    );
  });

  it('that meets no stop changes nothing and is told, with the nearest stop', () => {
    const report = judged({ at: 1.5, verdict: 'rejected', reason: 'Rain.' });
    expect(counted(report)).toEqual(counted(plain));
    expect(told(report).at(-1)).toMatch(
      /^judgement-without-stop: A judgement at 1\.5 s \(rejected: "Rain\."\) meets no stop of this log, so it changes nothing; the nearest is stop 1, from 3\.0 to \d\.\d s\.$/,
    );
  });

  it('that comes second on one stop holds, and both are told', () => {
    const report = judged(
      { at: during(1), verdict: 'rejected', reason: 'A dog.' },
      { at: during(1), verdict: 'restored', reason: 'The dog was elsewhere.' },
    );
    expect(counted(report)[0]).toBe(true);
    expect(told(report).at(-1)).toBe(
      'judged-twice: Stop 1 was judged 2 times: rejected ("A dog."), then restored ("The dog was elsewhere."). The last one holds.',
    );
  });

  it('may leave a log without a stop that counts: its reason is the one that is given', () => {
    const all = [1, 2, 3].map((number): GivenJudgement => ({
      at: during(number),
      verdict: 'rejected',
      reason: 'Wet road.',
    }));
    expect(judged(...all).sentence).toBe(
      'run.csv: 4 stops found, none fit to count; the hardest, stop 2: Wet road.',
    );
  });
});
