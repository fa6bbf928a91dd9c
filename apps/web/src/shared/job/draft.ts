/** What a person has typed into a job and the server does not have yet. */
export interface Draft {
  /** The kept job that the edits began from: its version, and its document to tell apart who changed what. */
  readonly base: { readonly version: number; readonly document: unknown };
  /** The whole document with the edits in it; null where only unfinished text is left. */
  readonly document: unknown;
  /** Text in fields that can't be read as a value yet, by path: it stays in the field, never in the document. */
  readonly texts: Readonly<Record<string, string>>;
  /** ms since 1970, of the last sign of life of the page that holds it. */
  readonly at: number;
}

/** Where drafts survive a reload or a dead battery: `localStorage`, or a plain map in tests. */
export type DraftShelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const prefix = 'standstill.draft.';
/** ms without a sign of life after which a draft belongs to a page that is gone. */
const deadAfter = 10_000;

export function putDraft(shelf: DraftShelf, jobId: string, pageId: string, draft: Draft): void {
  shelf.setItem(`${prefix}${jobId}.${pageId}`, JSON.stringify(draft));
}

export function dropDraft(shelf: DraftShelf, jobId: string, pageId: string): void {
  shelf.removeItem(`${prefix}${jobId}.${pageId}`);
}

/**
 * Takes up the draft of this page, else the newest one left behind by a page that is gone. The draft of a page that
 * still lives is left alone: two pages open on one job must meet at the server, not overwrite each other here.
 */
export function takeUpDraft(shelf: DraftShelf, jobId: string, pageId: string, now: number): Draft | null {
  const own = readDraft(shelf, `${prefix}${jobId}.${pageId}`);
  if (own) return own;
  const orphans = keysOf(shelf, jobId)
    .map((key) => ({ key, draft: readDraft(shelf, key) }))
    .filter(
      (entry): entry is { key: string; draft: Draft } => !!entry.draft && now - entry.draft.at > deadAfter,
    )
    .sort((a, b) => b.draft.at - a.draft.at);
  const newest = orphans[0];
  if (!newest) return null;
  shelf.removeItem(newest.key);
  putDraft(shelf, jobId, pageId, newest.draft);
  return newest.draft;
}

function keysOf(shelf: DraftShelf, jobId: string): string[] {
  const keys: string[] = [];
  for (let index = 0; index < shelf.length; index++) {
    const key = shelf.key(index);
    if (key?.startsWith(`${prefix}${jobId}.`)) keys.push(key);
  }
  return keys;
}

function readDraft(shelf: DraftShelf, key: string): Draft | null {
  try {
    const draft = JSON.parse(shelf.getItem(key) ?? 'null') as Draft | null;
    return draft && typeof draft.base?.version === 'number' && typeof draft.texts === 'object' ? draft : null;
  } catch {
    return null;
  }
}
