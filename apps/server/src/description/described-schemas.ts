import {
  balanceReport,
  comparison,
  comparisonRefusal,
  fadeRefusal,
  fadeReport,
  heatReport,
  jobDocumentSchema,
  limitsReport,
  logRefusal,
  logReport,
  pedalReport,
  prediction,
  problem,
  reconciliation,
  reconciliationRefusal,
  simulationReport,
  testPlan,
} from '@standstill/workshop';
import { z } from 'zod';
import { jobSummary, storedJob } from '../jobs/job-schemas.ts';
import { keptLog, logSummary } from '../logs/log-schemas.ts';
import { problemDocument } from '../problems/problem-document.ts';

/** The schemas that the API's description gives a name to. */
export const describedSchemas = z.registry<{ id: string }>();

const named = {
  JobDocument: jobDocumentSchema,
  JobSummary: jobSummary,
  StoredJob: storedJob,
  LogSummary: logSummary,
  KeptLog: keptLog,
  LogReport: logReport,
  LogRefusal: logRefusal,
  Prediction: prediction,
  LimitsReport: limitsReport,
  HeatReport: heatReport,
  PedalReport: pedalReport,
  BalanceReport: balanceReport,
  SimulationReport: simulationReport,
  Comparison: comparison,
  ComparisonRefusal: comparisonRefusal,
  FadeReport: fadeReport,
  FadeRefusal: fadeRefusal,
  TestPlan: testPlan,
  Reconciliation: reconciliation,
  ReconciliationRefusal: reconciliationRefusal,
  Problem: problem,
  ProblemDocument: problemDocument,
};

for (const [id, schema] of Object.entries(named)) describedSchemas.add(schema, { id });
