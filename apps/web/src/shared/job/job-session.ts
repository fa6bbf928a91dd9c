import type { Problem, StoredJob } from '@standstill/workshop';
import type { SaveAnswer } from '../api/jobs.ts';
import { ServerRefusal } from '../api/request.ts';
import { dropDraft, putDraft, takeUpDraft, type DraftShelf } from './draft.ts';
import { setAt } from './set-at.ts';

/** What is known about the job on this page: the kept version, the edits on top, and how saving goes. */
export interface JobState {
  readonly id: string;
  /** As the server has it. */
  readonly kept: StoredJob;
  /** As edited here: what every page shows and computes from. */
  readonly document: unknown;
  /** Text that can't be read yet, by path of its field. */
  readonly texts: Readonly<Record<string, string>>;
  readonly saving: 'saved' | 'waiting' | 'saving' | 'server-down' | 'refused' | 'conflict';
  /** Where the server refused the document. */
  readonly refusal: { readonly detail: string; readonly problems: readonly Problem[] } | null;
  /** The version that somebody else saved meanwhile. */
  readonly theirs: StoredJob | null;
  /** True where edits of an earlier visit were taken up again. */
  readonly takenUp: boolean;
}

/** The outside of a session, so that tests run it without a browser. */
export interface JobOutside {
  readonly save: (id: string, version: number, document: unknown) => Promise<SaveAnswer>;
  readonly shelf: DraftShelf;
  readonly pageId: string;
  readonly now: () => number;
  readonly later: (work: () => void, milliseconds: number) => unknown;
  readonly cancel: (handle: unknown) => void;
}

/** One page's edits of one job: saved by themselves, kept on this device until the server has them. */
export interface JobSession {
  readonly read: () => JobState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Changes a value of the document; `undefined` takes it out. */
  readonly set: (path: string, value: unknown) => void;
  /** Changes the document as a whole. */
  readonly edit: (change: (document: unknown) => unknown) => void;
  /** Keeps text that can't be read yet; null when the field holds a value again. */
  readonly setText: (path: string, text: string | null) => void;
  /** Takes a newer kept version where nothing is edited here. */
  readonly refresh: (kept: StoredJob) => void;
  /** Tries to save now; nothing happens where nothing waits. */
  readonly saveNow: () => Promise<void>;
  /** Ends a conflict: this document replaces the other version, which stays in the history. */
  readonly keep: (document: unknown) => Promise<void>;
  /** Ends a conflict: the other version stands, the edits here are dropped. */
  readonly takeTheirs: () => void;
  /** Leaves the job: what waits is sent once more, and stays on the shelf until the server has it. */
  readonly close: () => void;
}

const saveAfter = 700;
const retryAfter = 4000;
const signOfLifeEvery = 4000;

export function startJobSession(kept: StoredJob, outside: JobOutside): JobSession {
  const listeners = new Set<() => void>();
  let state = firstState(kept, outside);
  let timer: unknown = null;
  let beat: unknown = null;
  let closed = false;

  const change = (next: Partial<JobState>): void => {
    state = { ...state, ...next };
    shelve();
    for (const listener of listeners) listener();
  };

  const shelve = (): void => {
    outside.cancel(beat);
    const { id, kept: base, document, texts, saving } = state;
    const unsaved = saving !== 'saved';
    if (!unsaved && Object.keys(texts).length === 0) return dropDraft(outside.shelf, id, outside.pageId);
    const began = { version: base.version, document: unsaved ? base.document : null };
    const draft = { base: began, document: unsaved ? document : null, texts, at: outside.now() };
    putDraft(outside.shelf, id, outside.pageId, draft);
    if (!closed) beat = outside.later(shelve, signOfLifeEvery);
  };

  const saveLater = (milliseconds: number): void => {
    outside.cancel(timer);
    if (!closed) timer = outside.later(() => void saveNow(), milliseconds);
  };

  const saveNow = async (): Promise<void> => {
    if (!['waiting', 'server-down', 'refused'].includes(state.saving)) return;
    outside.cancel(timer);
    const sent = state.document;
    change({ saving: 'saving', refusal: null });
    try {
      settle(await outside.save(state.id, state.kept.version, sent), sent);
    } catch (reason) {
      if (reason instanceof ServerRefusal) return refuse(reason, sent);
      change({ saving: 'server-down' });
      saveLater(retryAfter);
    }
  };

  const settle = (answer: SaveAnswer, sent: unknown): void => {
    if (answer.kind === 'conflict') return change({ saving: 'conflict', theirs: answer.theirs });
    const editedMeanwhile = state.document !== sent;
    change({ kept: answer.job, saving: editedMeanwhile ? 'waiting' : 'saved', theirs: null });
    if (editedMeanwhile) saveLater(saveAfter);
  };

  const refuse = ({ problem }: ServerRefusal, sent: unknown): void => {
    const editedMeanwhile = state.document !== sent;
    const refusal = { detail: problem.detail, problems: problem.problems };
    change({ saving: editedMeanwhile ? 'waiting' : 'refused', refusal });
    if (editedMeanwhile) saveLater(saveAfter);
  };

  const edit = (make: (document: unknown) => unknown): void => {
    const document = make(state.document);
    if (document === state.document) return;
    if (state.saving === 'conflict') return change({ document });
    change({ document, saving: state.saving === 'saving' ? 'saving' : 'waiting' });
    if (state.saving === 'waiting') saveLater(saveAfter);
  };

  const setText = (path: string, text: string | null): void => {
    if ((state.texts[path] ?? null) === text) return;
    const { [path]: _old, ...others } = state.texts;
    change({ texts: text === null ? others : { ...others, [path]: text } });
  };

  const refresh = (newer: StoredJob): void => {
    if (state.saving !== 'saved' || newer.version <= state.kept.version) return;
    change({ kept: newer, document: newer.document });
  };

  const keep = async (document: unknown): Promise<void> => {
    if (!state.theirs) return;
    change({ kept: state.theirs, theirs: null, document, saving: 'waiting' });
    await saveNow();
  };

  const takeTheirs = (): void => {
    if (!state.theirs) return;
    change({ kept: state.theirs, document: state.theirs.document, theirs: null, texts: {}, saving: 'saved' });
  };

  if (state.saving === 'waiting') saveLater(0);
  return {
    read: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    set: (path, value) => edit((document) => setAt(document, path, value)),
    edit,
    setText,
    refresh,
    saveNow,
    keep,
    takeTheirs,
    close: () => {
      closed = true;
      outside.cancel(beat);
      if (state.saving === 'waiting') void saveNow();
    },
  };
}

function firstState(kept: StoredJob, outside: JobOutside): JobState {
  const draft = takeUpDraft(outside.shelf, kept.id, outside.pageId, outside.now());
  const state: JobState = {
    id: kept.id,
    kept,
    document: kept.document,
    texts: draft?.texts ?? {},
    saving: 'saved',
    refusal: null,
    theirs: null,
    takenUp: draft !== null,
  };
  if (!draft || draft.document === null) return state;
  if (JSON.stringify(draft.document) === JSON.stringify(kept.document)) return state;
  // The draft's own base decides: where the job moved on meanwhile, the save meets a conflict and a person chooses.
  return { ...state, kept: { ...kept, ...draft.base }, document: draft.document, saving: 'waiting' };
}
