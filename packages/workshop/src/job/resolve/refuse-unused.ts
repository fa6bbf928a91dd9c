import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import type { Filler } from './filler.ts';

interface RefuseUnusedInput<S> {
  readonly stated: S;
  readonly keys: readonly (keyof S & string)[];
  readonly path: DocumentPath;
  /** What the part is, so that the fact has no meaning on it. */
  readonly why: string;
}

/** A fact that means nothing on this kind of part is a mistake in one of the two: it is refused, not dropped. */
export function refuseUnused<S extends object>(
  filler: Filler,
  { stated, keys, path, why }: RefuseUnusedInput<S>,
): void {
  for (const key of keys.filter((name) => stated[name] !== undefined)) {
    const message = `${pathText([...path, key])} has no meaning on ${why}; take it out, or change the type`;
    const accepted = `no ${key} on ${why}`;
    filler.findings.push({
      code: 'contradiction',
      path: [...path, key],
      at: 'key',
      found: key,
      accepted,
      message,
    });
  }
}
