import type { DocumentPath } from '../reading/position.ts';

/** A document carried to a newer version, with the way back to where each value stood in the person's file. */
export interface Migrated {
  readonly value: unknown;
  /** Path in the migrated document → path in the one that was read. */
  readonly originalPath: (path: DocumentPath) => DocumentPath;
}
