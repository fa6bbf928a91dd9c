import { testFacts } from '../job/facts/test-facts.ts';
import type { Job, JobJudgement, JobRun } from '../job/job.ts';
import type { GivenJudgement } from './judge/given-judgement.ts';
import type { ReportLogOptions } from './report-log.ts';

/**
 * What a job says of how one of its logs is to be read: the speed that the stops were meant from, the grade, a person's
 * judgements, the columns that were chosen before, and between which temperatures stops count (not of a fade run, whose
 * stops start hotter each time).
 *
 * @param job - the job
 * @param run - the run that the log belongs to; null where the job has none
 * @returns options of `reportLog`, SI (°C for temperatures); only what the job states
 */
export function logOptionsOf(job: Job, run: JobRun | null): ReportLogOptions {
  const { startTemperatureLow: low, startTemperatureHigh: high } = job.test;
  const speed = run?.nominalSpeed ?? statedSpeed(job);
  return {
    ...(speed === null ? {} : { nominalSpeed: speed.value }),
    ...(run === null || run.grade === null ? {} : { grade: run.grade.value }),
    ...(run === null || run.startTemperature === null ? {} : { statedStart: run.startTemperature.value }),
    ...(run === null || run.judgements.length === 0 ? {} : { judgements: run.judgements.map(givenOf) }),
    ...(job.logColumns.length === 0 ? {} : { remembered: job.logColumns }),
    ...(run?.role === 'fade' || (low === null && high === null)
      ? {}
      : {
          startTemperature: {
            low: low?.value ?? testFacts.startTemperatureLow.low,
            high: high?.value ?? testFacts.startTemperatureHigh.high,
          },
        }),
  };
}

/** The speed of the stop that the job asks about, where a person chose it. */
function statedSpeed({ conditions }: Job): JobRun['nominalSpeed'] {
  const { speed } = conditions.facts;
  return speed.origin === 'assumed' ? null : speed;
}

function givenOf({ at, verdict, reason, by, date }: JobJudgement): GivenJudgement {
  return {
    at: at.value,
    verdict,
    reason,
    ...(by === undefined ? {} : { by }),
    ...(date === undefined ? {} : { date }),
  };
}
