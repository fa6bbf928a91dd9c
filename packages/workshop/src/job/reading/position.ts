/** Path of a value in the document, from the root. */
export type DocumentPath = readonly (string | number)[];

/** 1-based place in the text; nulls where the source has no lines. */
export interface Position {
  readonly line: number | null;
  readonly column: number | null;
}

/** Finds the place of a value, or of the key that names it; of the nearest parent where it is not there. */
export type Locate = (path: DocumentPath, part: 'key' | 'value') => Position;

/** For documents that never were text. */
export const nowhere: Locate = () => ({ line: null, column: null });
