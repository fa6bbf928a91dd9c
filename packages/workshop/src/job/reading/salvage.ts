import type { z } from 'zod';
import { jobDocumentSchema } from '../document/job-document.ts';
import type { JobDocument } from '../document/job-document.ts';
import { carFacts } from '../facts/car-facts.ts';
import { ownerOf } from '../resolve/owner-of.ts';
import type { DocumentPath } from './position.ts';
import { isRecord } from './schema-at.ts';

/** What is left of a document that the schema refuses, once what is wrong in it is taken out. */
export interface Salvage {
  readonly document: JobDocument;
  /** What something was taken out of or put into: `car`, `parts.kit-pad`, `setUps.front-kit`. */
  readonly spoiled: ReadonlySet<string>;
}

type Issue = z.core.$ZodIssue;
type Values = Record<string, unknown>;

/**
 * Takes out of a document what the schema refuses, so that the rest can still be looked through in the same pass.
 *
 * @param value - the document as read; not changed
 * @param issues - what the schema says of it
 * @returns the rest and what is spoiled; null where too little is left
 */
export function salvage(value: unknown, issues: readonly Issue[]): Salvage | null {
  const rest: unknown = JSON.parse(JSON.stringify(value));
  if (!isRecord(rest)) return null;
  const spoiled = new Set<string>();
  let open = issues;
  // Taking one thing out can uncover another; a document that needs more rounds has nothing left to say.
  for (let round = 0; round < 3; round += 1) {
    for (const issue of open) takeOut(rest, issue, spoiled);
    const parsed = jobDocumentSchema.safeParse(rest);
    if (parsed.success) return { document: parsed.data, spoiled: withHeirs(parsed.data, spoiled) };
    open = parsed.error.issues;
  }
  return null;
}

function takeOut(rest: Values, issue: Issue, spoiled: Set<string>): void {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  const unknown = issue.code === 'unrecognized_keys' ? issue.keys : null;
  if (path.length > 0) spoiled.add(ownerOf(path));
  const [section, owner, ...within] = path;
  if (section === undefined) for (const key of unknown ?? []) delete rest[key];
  else if (section === 'car') rest['car'] = anyCar;
  else if (section === 'title') rest['title'] = 'untitled';
  else if (section === 'parts' && owner !== undefined) remove(rest['parts'], owner);
  else if (section === 'setUps' && owner !== undefined)
    takeOutOfSetUp(rest['setUps'], owner, within, unknown);
  else delete rest[section];
}

/** A car that the schema takes; nothing is ever said of it. */
const anyCar = { name: 'any car', mass: carFacts.mass.example, wheelbase: carFacts.wheelbase.example };

function takeOutOfSetUp(
  setUps: unknown,
  id: string | number,
  within: DocumentPath,
  unknown: readonly string[] | null,
): void {
  const setUp = isRecord(setUps) ? setUps[id] : undefined;
  const [key] = within;
  if (!isRecord(setUp)) remove(setUps, id);
  else if (unknown !== null) for (const one of unknown) delete setUp[one];
  else if (key === undefined) remove(setUps, id);
  else if (key === 'title') setUp['title'] = 'untitled';
  else delete setUp[key];
}

function remove(from: unknown, key: string | number): void {
  if (isRecord(from)) delete from[key];
}

/** A set-up that is based on a spoiled one is spoiled too. */
function withHeirs({ setUps }: JobDocument, spoiled: ReadonlySet<string>): ReadonlySet<string> {
  const all = new Set(spoiled);
  for (let before = -1; before !== all.size;) {
    before = all.size;
    for (const [id, { basedOn }] of Object.entries(setUps))
      if (basedOn !== undefined && all.has(`setUps.${basedOn}`)) all.add(`setUps.${id}`);
  }
  return all;
}
