import type { Job, Origin } from '@standstill/workshop';

/** How many values of a job are known in which way, each value once however many set-ups share it. */
export function originCounts(job: Job): Readonly<Record<Origin, number>> {
  const origins = new Map<string, Origin>();
  collect([job.car.facts, job.conditions, job.parts], origins);
  const counts = { measured: 0, specified: 0, assumed: 0 };
  for (const origin of origins.values()) counts[origin]++;
  return counts;
}

function collect(value: unknown, origins: Map<string, Origin>): void {
  if (typeof value !== 'object' || value === null) return;
  if ('origin' in value && 'path' in value) {
    origins.set(String(value.path), value.origin as Origin);
    return;
  }
  for (const below of Object.values(value)) collect(below, origins);
}
