import type { CountedDistances } from './counted-distances.ts';
import type { LeftOutStop } from './stop-set.ts';

/** A set with fewer than two stops that count, which has no spread. */
export interface SetTooSmall<Role extends string = 'before' | 'after'> {
  readonly ok: false;
  readonly code: 'set-too-small';
  readonly set: Role;
  /** Stops that count. */
  readonly counted: number;
  readonly leftOut: readonly LeftOutStop[];
}

/** @returns the first set that is too small to have a spread; undefined where all will do */
export function setTooSmall<Role extends string>(
  counted: readonly (readonly [Role, CountedDistances])[],
): SetTooSmall<Role> | undefined {
  for (const [set, { distances, leftOut }] of counted)
    if (distances.length < 2)
      return { ok: false, code: 'set-too-small', set, counted: distances.length, leftOut };
  return undefined;
}
