import type { JobRun } from '../job/job.ts';
import { listOf } from '../words/list-of.ts';

/**
 * What is wrong between the set-up that a comparison is asked about and the ones that the job's runs name for its logs.
 *
 * @param asked - id of the set-up that is said to have been fitted after; null where nobody says
 * @param before - runs of the logs from before
 * @param after - runs of the logs from after
 * @returns one sentence for each contradiction; none where the runs agree or the job has no run for the logs
 */
export function setUpMismatch(
  asked: string | null,
  before: readonly JobRun[],
  after: readonly JobRun[],
): readonly string[] {
  return [
    ...(asked === null ? [] : otherSetUp(asked, after)),
    ...mixed('before', before),
    ...mixed('after', after),
  ];
}

function otherSetUp(asked: string, after: readonly JobRun[]): string[] {
  return after
    .filter(({ setUp }) => setUp !== asked)
    .map(
      ({ id, log, setUp }) =>
        `The job says that ${log} (run "${id}") was driven with "${setUp}", not with "${asked}": what the model expects here is of another set-up than the one that was measured.`,
    );
}

function mixed(side: string, runs: readonly JobRun[]): string[] {
  const setUps = [...new Set(runs.map(({ setUp }) => setUp))];
  if (setUps.length < 2) return [];
  return [
    `By the job, the logs from ${side} are of different set-ups (${listOf(setUps.toSorted())}): their mean is of none of them.`,
  ];
}
