import type { ReconciliationRefusal } from '../results/reconciliation.ts';
import { plural } from '../words/plural.ts';

/** Why a model can't be held against stops. */
export const reconciliationRefusalCodes = [
  'unknown-set-up',
  'nominal-speeds-differ',
  'no-stop-counts',
  'set-too-small',
  'same-log',
  'model-without-answer',
] as const;

type Code = (typeof reconciliationRefusalCodes)[number];

/** What the sentence names, where it names something: a set-up, a set. */
export interface RefusedBecause {
  readonly code: Code;
  readonly name?: string;
  readonly count?: number;
}

/** One sentence: what is missing, and what to do about it. */
export function refuseReconciliation({ code, name = '', count = 0 }: RefusedBecause): ReconciliationRefusal {
  const sentences: Readonly<Record<Code, string>> = {
    'unknown-set-up': `The job has no set-up "${name}"; name one that it has.`,
    'nominal-speeds-differ':
      'The runs were meant from different speeds; say which speed to correct all of them to.',
    'no-stop-counts':
      'No stop counts; look at the reasons beside the stops, then drive at least three stops for each set.',
    'set-too-small': `The set of "${name}" has ${plural(count, 'stop')} that count${count === 1 ? 's' : ''}; the model needs at least two in each set, and four or more to learn much.`,
    'same-log': `${name} is given twice: stops counted twice feign certainty; give each log once.`,
    'model-without-answer': `By the job, "${name}" hardly ever comes to rest or lies outside what the formulas are valid for, so there is nothing to hold the stops against; \`standstill predict\` says what is wrong with it.`,
  };
  return { kind: 'reconciliation-refusal', version: 1, code, sentence: sentences[code] };
}
