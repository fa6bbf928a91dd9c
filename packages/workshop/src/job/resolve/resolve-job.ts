import type { JobDocument } from '../document/job-document.ts';
import type { Job, JobPart } from '../job.ts';
import type { Finding } from '../reading/finding.ts';
import { contradictions } from './contradictions.ts';
import { Filler } from './filler.ts';
import { ownerOf } from './owner-of.ts';
import { resolveCar } from './resolve-car.ts';
import { resolveConditions } from './resolve-conditions.ts';
import { resolveLogColumns } from './resolve-log-columns.ts';
import { resolvePart } from './resolve-part.ts';
import { resolvePedalTests } from './resolve-pedal-tests.ts';
import { resolveRuns } from './resolve-runs.ts';
import { resolveSetUps } from './resolve-set-ups.ts';
import { resolveTest } from './resolve-test.ts';

export type Resolution =
  { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly findings: readonly Finding[] };

/**
 * Turns a checked document into a job in which every value is known, or says what can't be: what is missing or names
 * nothing, and what contradicts each other among the facts that have no such mistake.
 *
 * @param document - the job's document
 * @param spoiled - what a mistake was already found in, so that nothing that follows from it is told
 * @returns the job or the findings
 */
export function resolveJob(document: JobDocument, spoiled: ReadonlySet<string> = new Set()): Resolution {
  const filler = new Filler();
  const car = resolveCar(filler, document.car);
  const conditions = resolveConditions(filler, document.conditions);
  const parts: Record<string, JobPart> = {};
  for (const [id, part] of Object.entries(document.parts)) parts[id] = resolvePart(filler, id, part);
  const setUps = resolveSetUps(filler, document, parts);
  const runs = resolveRuns(filler, document);
  const test = resolveTest(filler, document.test);
  const logColumns = resolveLogColumns(filler, document.logColumns);
  const pedalTests = resolvePedalTests(filler, document);
  const also = new Set([...spoiled, ...filler.findings.map(({ path }) => ownerOf(path))]);
  const findings = [...filler.findings, ...contradictions({ car, parts, setUps }, also)];
  if (findings.length > 0) return { ok: false, findings };
  const { title, complaint = null, notice = null } = document;
  listSpreads(filler);
  const { fillings } = filler;
  return {
    ok: true,
    job: {
      title,
      complaint,
      notice,
      car,
      conditions,
      parts,
      setUps,
      runs,
      test,
      logColumns,
      pedalTests,
      fillings,
    },
  };
}

function listSpreads(filler: Filler): void {
  if (filler.spreadsTaken === 0) return;
  const reason = 'values without a stated spread take one by their kind and origin, common practice';
  filler.assumedWord([], 'Spreads', `${filler.spreadsTaken} taken from the table of default spreads`, reason);
}
