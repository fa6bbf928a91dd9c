import type { z } from 'zod';
import { ownerOf } from '../resolve/owner-of.ts';
import { resolveJob } from '../resolve/resolve-job.ts';
import type { Finding } from './finding.ts';
import { nearestWord } from './nearest-word.ts';
import { pathText } from './path-text.ts';
import { salvage } from './salvage.ts';
import { isRecord, valueAt } from './schema-at.ts';

/**
 * Looks through what the schema found no fault with, in a document that it refuses: names that nothing answers to and
 * facts that contradict each other, so that they need no second pass.
 *
 * @param value - the document as read
 * @param issues - what the schema says of it
 * @returns further findings; none that only follows from what the schema found
 */
export function findMore(value: unknown, issues: readonly z.core.$ZodIssue[]): Finding[] {
  const rest = salvage(value, issues);
  if (rest === null) return [];
  const resolution = resolveJob(rest.document, rest.spoiled);
  if (resolution.ok) return [];
  return resolution.findings.filter((finding) => !follows(finding, value, rest.spoiled));
}

function follows({ code, path }: Finding, value: unknown, spoiled: ReadonlySet<string>): boolean {
  if (code === 'unknown-part') return meant(value, 'parts', valueAt(value, path), spoiled);
  if (code === 'unknown-set-up') return meant(value, 'setUps', valueAt(value, path), spoiled);
  return spoiled.has(ownerOf(path));
}

/** Whether a name that nothing answers to may well mean something that was taken out. */
function meant(
  value: unknown,
  section: 'parts' | 'setUps',
  name: unknown,
  spoiled: ReadonlySet<string>,
): boolean {
  const there = valueAt(value, [section]);
  const near = nearestWord(String(name), isRecord(there) ? Object.keys(there) : []);
  return near !== null && spoiled.has(pathText([section, near]));
}
