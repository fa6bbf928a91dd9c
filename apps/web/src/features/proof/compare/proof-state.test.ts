import type { LogReport } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { sameSets, unusable, whatIsMissing, type LogState } from './proof-state.ts';

const report = { kind: 'log-report' } as LogReport;
const log = (name: string, change: Partial<LogState> = {}): LogState => ({
  name,
  missing: false,
  failed: false,
  refused: false,
  report,
  ...change,
});
const waiting = log('slow.csv', { report: null });
const refused = log('noise.bin', { report: null, refused: true });

describe('whatIsMissing', () => {
  const say = (before: readonly LogState[], after: readonly LogState[], sameSetUp = false) =>
    whatIsMissing({ before, after, sameSetUp });

  it('says which half is missing', () => {
    expect(say([], [])).toMatch(/^Nothing yet/);
    expect(say([log('a')], [])).toMatch(/before the work, but none after/);
    expect(say([], [log('a')])).toMatch(/after the work, but none before/);
  });

  it('answers nothing from half-read sets', () => {
    expect(say([log('a')], [log('b'), waiting])).toMatch(/^Reading/);
    expect(say([log('a')], [log('b')])).toBeNull();
  });

  it('names what could not be used, and goes on with the rest of a set', () => {
    expect(say([log('a')], [refused])).toMatch(/noise\.bin could not be used/);
    expect(say([log('a')], [log('b'), refused])).toBeNull();
    expect(unusable([log('a'), refused, waiting, log('gone', { report: null, missing: true })])).toEqual([
      'noise.bin',
      'gone',
    ]);
  });

  it('a set-up is not compared with itself', () => {
    expect(say([log('a')], [log('a')], true)).toMatch(/same set-up/);
  });
});

describe('sameSets', () => {
  it('an answer stays only for the same logs, set-ups and definition', () => {
    expect(sameSets(['found', ['a.csv', 1], 'application'], ['found', ['a.csv', 1], 'application'])).toBe(
      true,
    );
    expect(sameSets(['found', ['a.csv', 1], 'application'], ['found', ['a.csv', 1], 'gate'])).toBe(false);
    expect(sameSets(['found', ['a.csv', 1]], ['kit', ['a.csv', 1]])).toBe(false);
    expect(sameSets(undefined, ['kit'])).toBe(false);
  });
});
