import { z } from 'zod';
import { fadeRefusal, fadeReport } from '../results/fade-report.ts';
import { reconciliation, reconciliationRefusal } from '../results/reconciliation.ts';
import { testPlan } from '../results/test-plan.ts';
import { heatReport } from '../results/heat-report.ts';
import { balanceReport } from '../results/balance-report.ts';
import { comparison, comparisonRefusal, logRefusal, logReport } from '../results/log-report.ts';
import { limitsReport } from '../results/limits-report.ts';
import { pedalReport } from '../results/pedal-report.ts';
import { prediction } from '../results/prediction.ts';
import { problem } from '../results/problem.ts';
import { simulationReport } from '../results/simulation-report.ts';

const results = {
  prediction,
  'balance-report': balanceReport,
  'limits-report': limitsReport,
  'pedal-report': pedalReport,
  'heat-report': heatReport,
  'simulation-report': simulationReport,
  'log-report': logReport,
  'log-refusal': logRefusal,
  comparison,
  'comparison-refusal': comparisonRefusal,
  'fade-report': fadeReport,
  'fade-refusal': fadeRefusal,
  'test-plan': testPlan,
  reconciliation,
  'reconciliation-refusal': reconciliationRefusal,
  problem,
} as const;

export type ResultKind = keyof typeof results;

/** All results that have a published schema. */
export const resultKinds = Object.keys(results) as readonly ResultKind[];

/**
 * The JSON Schema (draft 2020-12) of a result: the same that the command line and the server answer with.
 *
 * @param kind - which result
 * @returns the schema
 */
export function resultJsonSchema(kind: ResultKind): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(results[kind], { target: 'draft-2020-12' });
  return { $schema, $id: `https://standstill.invalid/schema/${kind}-1.json`, title: `Standstill ${kind}`, ...rest };
}
