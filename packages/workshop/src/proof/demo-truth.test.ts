import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { mean } from '@standstill/numerics';
import { compareRuns } from './compare-runs.ts';
import { reportLog } from './report-log.ts';
import type { LogReport } from '../results/log-report.ts';

const demo = join(import.meta.dirname, '../../../../examples/hill-climb-coupe');
const nominalSpeed = 60 * 0.44704;

interface Truth {
  readonly stops: readonly { readonly entrySpeed_m_s: number; readonly distance_m: number }[];
}
const truth = JSON.parse(readFileSync(join(demo, 'truth.json'), 'utf8')) as Readonly<
  Record<'before' | 'after', Truth>
>;

/** m, what was put into the logs, at the nominal speed. */
function trueMean(side: 'before' | 'after'): number {
  return mean(
    truth[side].stops.map(
      ({ distance_m, entrySpeed_m_s }) => distance_m * (nominalSpeed / entrySpeed_m_s) ** 2,
    ),
  );
}

function report(side: string): LogReport {
  const read = reportLog(
    { name: `${side}.csv`, content: readFileSync(join(demo, `${side}.csv`)) },
    { nominalSpeed },
  );
  if (read.kind !== 'log-report') throw new Error(read.sentence);
  return read;
}

it('holds what was put into the demo logs: both means and the difference inside their intervals', () => {
  const result = compareRuns({
    before: { name: 'before', reports: [report('before')] },
    after: { name: 'after', reports: [report('after')] },
    seed: 1,
  });
  if (result.kind !== 'comparison') throw new Error(result.sentence);
  expect([trueMean('before'), trueMean('after')].map((value) => (value / 0.3048).toFixed(1))).toEqual([
    '157.8',
    '134.9',
  ]);
  for (const side of ['before', 'after'] as const) {
    const { low, high } = result[side].mean_m;
    expect(low).toBeLessThan(trueMean(side));
    expect(high).toBeGreaterThan(trueMean(side));
    expect(high - low).toBeLessThan(8);
  }
  const difference = trueMean('after') - trueMean('before');
  expect(result.sameLogger).toBe(true);
  expect(result.difference_m.low).toBeLessThan(difference);
  expect(result.difference_m.high).toBeGreaterThan(difference);
  expect(result.difference_m.high - result.difference_m.low).toBeLessThan(2.5);
});
