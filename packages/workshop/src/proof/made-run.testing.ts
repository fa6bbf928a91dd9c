import type { JobRun } from '../job/job.ts';

/** A run of a job that states only what a test is about. */
export function madeRun(stated: Partial<JobRun> & Pick<JobRun, 'id' | 'setUp' | 'log'>): JobRun {
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
  return { ...nothing, ...stated };
}
