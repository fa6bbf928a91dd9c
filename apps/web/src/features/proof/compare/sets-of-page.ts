import { setsOfJob, type GivenLog, type Job, type JobSets, type RunDocument } from '@standstill/workshop';
import type { ProofPair } from '../pair/proof-choices.tsx';
import type { RunReport } from '../read/use-reports.ts';
import { stateOf } from './proof-state.ts';

interface PageSets {
  readonly job: Job;
  readonly pair: ProofPair;
  readonly reports: readonly RunReport[];
  readonly titleOf: (setUp: string) => string;
}

/** The sets that the logs of this page make, sorted as everywhere: what contradicts itself is told. */
export function setsOfPage({ job, pair, reports, titleOf }: PageSets): JobSets {
  const runs = reports.map(({ run }) => run);
  const logs = reports.flatMap((read): GivenLog[] => {
    const { report } = stateOf(read);
    if (!report) return [];
    const names = [read.run.log, ...(read.log ? [read.log.id, read.log.name] : [])];
    // A log that stands in two runs is told apart by its role.
    const { role } = read.run;
    return [{ report, names, ...(role && isShared(read.run, runs) ? { role } : {}) }];
  });
  return setsOfJob(job, logs, {
    setUps: { before: pair.before, after: pair.after },
    names: { before: titleOf(pair.before), after: titleOf(pair.after) },
  });
}

function isShared({ id, log }: RunDocument, runs: readonly RunDocument[]): boolean {
  return runs.some((other) => other.id !== id && other.log === log);
}
