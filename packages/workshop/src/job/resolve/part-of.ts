import type { PartDocument, PartKind } from '../document/part-schemas.ts';

/** The document of one kind of part. */
export type PartOf<K extends PartKind> = Extract<PartDocument, { kind: K }>;
