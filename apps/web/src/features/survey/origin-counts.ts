import type { Job, Origin } from '@standstill/workshop';

/**
 * How many values of a job are measured and how many specified, each once however many set-ups share it. What is assumed
 * is counted by the job's own list of fillings, the same on every page.
 */
export function originCounts(job: Job): Readonly<Record<Exclude<Origin, 'assumed'>, number>> {
  const origins = new Map<string, Origin>();
  collect([job.car.facts, job.conditions, job.parts], origins);
  const all = [...origins.values()];
  const count = (wanted: Origin) => all.filter((origin) => origin === wanted).length;
  return { measured: count('measured'), specified: count('specified') };
}

function collect(value: unknown, origins: Map<string, Origin>): void {
  if (typeof value !== 'object' || value === null) return;
  if ('origin' in value && 'path' in value) {
    origins.set(String(value.path), value.origin as Origin);
    return;
  }
  for (const below of Object.values(value)) collect(below, origins);
}
