import type { JobDocument } from '../document/job-document.ts';
import type { RunDocument } from '../document/run-schema.ts';
import { conditionsFacts } from '../facts/conditions-facts.ts';
import { judgementFacts, runFacts } from '../facts/run-facts.ts';
import type { JobRun } from '../job.ts';
import type { Filler } from './filler.ts';
import { statedFacts } from './stated-facts.ts';
import { unknownId } from './unknown-id.ts';

/** The measured runs, each on a set-up that is there and with an id of its own. */
export function resolveRuns(filler: Filler, document: JobDocument): JobRun[] {
  const runs = document.runs ?? [];
  runs.forEach((run, index) => {
    if (runs.findIndex((other) => other.id === run.id) < index) repeatedId(filler, run, index);
    if (!Object.hasOwn(document.setUps, run.setUp)) {
      unknownId(filler, ['runs', index, 'setUp'], 'unknown-set-up', run.setUp, Object.keys(document.setUps));
    }
  });
  return runs.map((run, index) => resolveRun(filler, run, index));
}

function resolveRun(filler: Filler, run: RunDocument, index: number): JobRun {
  const path = ['runs', index];
  const facts = { nominalSpeed: conditionsFacts.speed, ...runFacts };
  const { judgements = [], ...rest } = run;
  return {
    ...rest,
    ...statedFacts(filler, { facts, stated: run, path }),
    judgements: judgements.map((judgement, at) => ({
      ...judgement,
      at: filler.stated(judgementFacts.at, judgement.at, [...path, 'judgements', at, 'at']),
    })),
  };
}

function repeatedId(filler: Filler, run: RunDocument, index: number): void {
  const message = `runs[${index}].id is "${run.id}", which an earlier run has; give each run an id of its own`;
  const accepted = 'an id of its own';
  filler.findings.push({
    code: 'duplicate-id',
    path: ['runs', index, 'id'],
    at: 'value',
    found: `"${run.id}"`,
    accepted,
    message,
  });
}
