import { runFacts } from '../job/facts/run-facts.ts';
import type { JobRun } from '../job/job.ts';
import type { Known } from '../job/known.ts';

/** A run of a job that states only what a test is about. */
export function madeRun(facts: Partial<JobRun> & Pick<JobRun, 'id' | 'setUp' | 'log'>): JobRun {
  const nothing = {
    nominalSpeed: null,
    headWind: null,
    grade: null,
    surfaceTemperature: null,
    tireTemperature: null,
    airTemperature: null,
    startTemperature: null,
    judgements: [],
  };
  return { ...nothing, ...facts };
}

/** A stated condition of a run, SI (°C for temperatures). */
export function stated(key: keyof typeof runFacts, value: number): Known {
  const fact = runFacts[key];
  const { low, high } = fact;
  return { value, origin: 'measured', spread: 0, path: `runs[0].${key}`, low, high, fact };
}
