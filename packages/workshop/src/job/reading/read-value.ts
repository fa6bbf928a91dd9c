import { jobDocumentSchema } from '../document/job-document.ts';
import type { JobDocument } from '../document/job-document.ts';
import { migrate } from '../migrate/migrate.ts';
import { printFillings } from '../print-fillings.ts';
import { resolveJob } from '../resolve/resolve-job.ts';
import { describeIssues } from './describe-issues.ts';
import { findMore } from './find-more.ts';
import type { Finding } from './finding.ts';
import { forbiddenKeys } from './forbidden-keys.ts';
import type { JobReading } from './job-reading.ts';
import type { DocumentPath, Locate } from './position.ts';
import { problemOf } from './problem-of.ts';

export interface ValueSource {
  readonly file: string | null;
  readonly locate: Locate;
}

/**
 * Reads plain values that know where they came from: version, schema, references, contradictions, in this order. What the
 * schema refuses does not hide the mistakes that stand elsewhere.
 */
export function readValue(value: unknown, source: ValueSource): JobReading {
  const migration = migrate(value);
  if (!migration.ok) return refuse([migration.finding], source, (path) => path);
  const { migrated, from } = migration;
  const forbidden = forbiddenKeys(value, []);
  if (forbidden.length > 0) return refuse(forbidden, source, (path) => path);
  const parsed = jobDocumentSchema.safeParse(migrated.value);
  if (!parsed.success) {
    const findings = describeIssues(jobDocumentSchema, migrated.value, parsed.error.issues);
    const more = findMore(migrated.value, parsed.error.issues);
    return refuse([...findings, ...more], source, migrated.originalPath);
  }
  const document: JobDocument = parsed.data;
  const resolution = resolveJob(document);
  if (!resolution.ok) return refuse(resolution.findings, source, migrated.originalPath);
  const { job } = resolution;
  return { ok: true, job, document, assumed: printFillings(job.fillings, 'us'), migratedFrom: from };
}

function refuse(
  findings: readonly Finding[],
  { file, locate }: ValueSource,
  originalPath: (path: DocumentPath) => DocumentPath,
): JobReading {
  const problems = findings.map((finding) =>
    problemOf(finding, file, locate(originalPath(finding.path), finding.at)),
  );
  const inOrder = problems.sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
  return { ok: false, problems: inOrder };
}
