import { jobDocumentVersion } from '../document/job-document.ts';
import type { Finding } from '../reading/finding.ts';
import { isRecord } from '../reading/schema-at.ts';
import { shown } from '../reading/shown.ts';
import { fromVersion1 } from './from-version-1.ts';
import type { Migrated } from './migrated.ts';

export type Migration =
  | { readonly ok: true; readonly migrated: Migrated; readonly from: number | null }
  | { readonly ok: false; readonly finding: Finding };

/** Carries a document of any version of ours to the newest; refuses what is newer than this program. */
export function migrate(value: unknown): Migration {
  if (!isRecord(value)) return refuse(notADocument(value));
  const version = value['standstill'];
  if (version === undefined || version === null) return refuse(versionMissing);
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refuse(badVersion(version));
  if (version > jobDocumentVersion) return refuse(newerVersion(version));
  if (version === 1) return { ok: true, migrated: fromVersion1(value), from: 1 };
  return { ok: true, migrated: { value, originalPath: (path) => path }, from: null };
}

function refuse(finding: Finding): Migration {
  return { ok: false, finding };
}

function notADocument(value: unknown): Finding {
  const found = value === null ? 'nothing' : shown(value);
  const accepted = 'a block of keys that starts with "standstill: 2"';
  const message = `this is not a job: found ${found}; accepted is ${accepted}`;
  return { code: 'job-not-a-document', path: [], at: 'value', found, accepted, message };
}

const versionMissing: Finding = {
  code: 'job-version-missing',
  path: [],
  at: 'key',
  found: 'no version',
  accepted: `standstill: ${jobDocumentVersion}`,
  message: `this is not a job, or its version is missing; the first line of a job is "standstill: ${jobDocumentVersion}"`,
};

function badVersion(version: unknown): Finding {
  const accepted = `1 to ${jobDocumentVersion}`;
  const message = `standstill is ${shown(version)}; accepted versions of the job document are ${accepted}`;
  return { code: 'wrong-kind', path: ['standstill'], at: 'value', found: shown(version), accepted, message };
}

function newerVersion(version: number): Finding {
  const accepted = `1 to ${jobDocumentVersion}`;
  const message = `this job is written in version ${version}, by a newer program; this one reads ${accepted}. Nothing was read or changed; update the program`;
  return {
    code: 'job-version-newer',
    path: ['standstill'],
    at: 'value',
    found: String(version),
    accepted,
    message,
  };
}
