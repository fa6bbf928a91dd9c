import { useSyncExternalStore } from 'react';

/** How far the draws are that this page waits for; null where none are on their way. */
export interface DrawProgress {
  readonly done: number;
  readonly of: number;
}

let current: DrawProgress | null = null;
const watchers = new Set<() => void>();

/** Tells how far the draws are. */
export function showDrawProgress(progress: DrawProgress | null): void {
  current = progress;
  for (const tell of watchers) tell();
}

/** How far the draws are, as it changes. */
export function useDrawProgress(): DrawProgress | null {
  return useSyncExternalStore(subscribe, () => current);
}

function subscribe(tell: () => void): () => void {
  watchers.add(tell);
  return () => void watchers.delete(tell);
}
