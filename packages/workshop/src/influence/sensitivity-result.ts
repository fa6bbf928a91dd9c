import type { OutputSensitivity, SobolIndex } from '@standstill/numerics';
import type { Job } from '../job/job.ts';
import type { SensitivityResult } from '../results/limits-report.ts';
import { knownOwner } from './known-owner.ts';
import type { Sensitivity } from './sensitivity.ts';

/**
 * Where the spread of one answer comes from, as it leaves the program.
 *
 * @param job - the job
 * @param found - indices of all answers
 * @param output - which answer
 * @returns variance and indices by number and by part, the greatest first
 */
export function sensitivityResult(job: Job, found: Sensitivity, output: number): SensitivityResult {
  const { rows = 0, variance = 0, indices = [] }: Partial<OutputSensitivity> = found.outputs[output] ?? {};
  const rest = indices[found.single];
  const numbers = indices.slice(0, found.single).map((index, place) => {
    const { path, fact } = found.knowns[place]!;
    return { path, title: fact.title, of: knownOwner(job, path).title, ...shares(index) };
  });
  const parts = indices.slice(found.single + 1).map((index, place) => {
    const path = found.parts[place]!;
    return { path, title: knownOwner(job, `${path}.`).title, ...shares(index) };
  });
  return {
    rows,
    variance_m2: Number.isFinite(variance) ? variance : 0,
    numbers: byTotal(numbers),
    rest: rest === undefined ? null : { count: found.knowns.length - found.single, ...shares(rest) },
    parts: byTotal(parts),
  };
}

function byTotal<T extends { readonly total: { readonly value: number } }>(all: readonly T[]): T[] {
  return all.toSorted((a, b) => b.total.value - a.total.value);
}

/** Shares of the variance with their intervals. */
function shares({
  first,
  firstInterval,
  total,
  totalInterval,
}: SobolIndex): Pick<SensitivityResult['numbers'][number], 'first' | 'total'> {
  return {
    first: { value: first, ...held(firstInterval, first) },
    total: { value: total, ...held(totalInterval, total) },
  };
}

function held(
  { low, high }: { readonly low: number; readonly high: number },
  value: number,
): { low: number; high: number } {
  return { low: Math.min(low, value), high: Math.max(high, value) };
}
