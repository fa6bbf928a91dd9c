import { setsPicture } from '@standstill/pictures';
import { compareRuns, readJobDocument, setsOfJob } from '@standstill/workshop';
import type {
  ComparedSets,
  Comparison,
  ComparisonRefusal,
  CompareRunsInput,
  Problem,
} from '@standstill/workshop';
import type { ProofAnswer } from '../proof/proof-answer.ts';
import { readKeptLogs } from '../proof/read-kept-logs.ts';
import { answerQuestion } from '../questions/answer-question.ts';
import type { ComparisonTask } from './calculations.ts';

type Expectation = NonNullable<CompareRunsInput['expectation']>;
type Failed = { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads the sets of logs, holds them against each other and, where the change of set-up is known, against what the model
 * expects of it.
 *
 * @param task - the logs and their job
 * @returns the comparison with its picture, or what stands in its way
 */
export function calculateComparison(task: ComparisonTask): ProofAnswer<Comparison | ComparisonRefusal> {
  const reading = readJobDocument(task.document);
  if (!reading.ok) return { ...reading, about: 'job' };
  const { job } = reading;
  const read = readKeptLogs(job, task.logs, {
    units: task.units,
    ...(task.nominalSpeed === undefined ? {} : { nominalSpeed: task.nominalSpeed }),
  });
  if (!read.ok) return read;
  const { expectation: asked } = task;
  const setUps = asked === undefined ? {} : { before: asked.against, after: asked.setUp };
  const { compared, change } = setsOfJob(job, read.logs, { names: task.names, setUps });
  if (compared === null) throw new Error('a comparison without one of its sides');
  const speed = task.nominalSpeed ?? compared.nominalSpeed;
  const expected = expectationOf(task, asked ?? change, speed);
  if (expected !== null && !expected.ok) return { ...expected, about: 'job' };
  const answer = compareRuns({
    ...compared,
    seed: task.seed,
    units: task.units,
    confounders: task.confounders,
    ...(task.definition === undefined ? {} : { definition: task.definition }),
    ...(speed === undefined ? {} : { nominalSpeed: speed }),
    ...(expected === null ? {} : { expectation: expected.expectation }),
  });
  return { ok: true, answer, picture: task.picture ? drawn(answer, compared, task.units) : null };
}

function drawn(
  answer: Comparison | ComparisonRefusal,
  { before, after }: ComparedSets,
  units: ComparisonTask['units'],
): string | null {
  if (answer.kind === 'comparison-refusal') return null;
  return setsPicture(answer, { before: before.reports, after: after.reports }, { units });
}

function expectationOf(
  { document, units }: ComparisonTask,
  change: { readonly setUp: string; readonly against: string } | null,
  speed: number | undefined,
): { readonly ok: true; readonly expectation: Expectation } | Failed | null {
  if (change === null) return null;
  const { setUp, against } = change;
  const options = { setUps: [against, setUp], units, ...(speed === undefined ? {} : { speed_m_s: speed }) };
  const answer = answerQuestion({ question: 'predict', document, options });
  if (!answer.ok) return answer;
  const { differences, assumed } = answer.answer;
  const difference = differences.find((each) => each.id === setUp);
  if (difference === undefined) throw new Error(`the prediction has no difference for ${setUp}`);
  return { ok: true, expectation: { setUp, difference: difference.distance_m, assumed: assumed.length } };
}
