import { nearestWord } from '../reading/nearest-word.ts';
import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import { shown } from '../reading/shown.ts';
import type { Filler } from './filler.ts';

interface ClassOfInput<C> {
  readonly classes: Readonly<Record<string, C>>;
  /** Id that the person gave. */
  readonly id: string | undefined;
  readonly path: DocumentPath;
  /** Id to take where none is given, and how the choice is explained. */
  readonly otherwise: string;
  readonly because: string;
  /** False where a near name must not be suggested, because a slip there is dangerous. */
  readonly suggests?: boolean;
}

/** The class whose values fill what a part leaves out; one taken for want of a stated one is listed as assumed. */
export function classOf<C extends { readonly title: string }>(filler: Filler, input: ClassOfInput<C>): C {
  const { classes, id, path, otherwise, because, suggests = true } = input;
  const stated = id === undefined ? undefined : ownClass(classes, id);
  if (stated !== undefined) return stated;
  if (id !== undefined) unknownClass(filler, classes, id, { path, suggests });
  const taken = ownClass(classes, otherwise);
  if (taken === undefined) throw new TypeError(`no class ${otherwise}`);
  if (id === undefined) filler.assumedWord([...path, 'class'], 'Class', taken.title, because);
  return taken;
}

function ownClass<C>(classes: Readonly<Record<string, C>>, id: string): C | undefined {
  return Object.hasOwn(classes, id) ? classes[id] : undefined;
}

function unknownClass(
  filler: Filler,
  classes: Readonly<Record<string, unknown>>,
  id: string,
  { path, suggests }: { readonly path: DocumentPath; readonly suggests: boolean },
): void {
  const ids = Object.keys(classes);
  const near = suggests ? nearestWord(id, ids) : null;
  const accepted = ids.join(', ');
  const hint = near === null ? `accepted: ${accepted}` : `did you mean "${near}"? Accepted: ${accepted}`;
  const message = `${pathText(path)}.class is ${shown(id)}; ${hint}`;
  filler.findings.push({
    code: 'unknown-class',
    path: [...path, 'class'],
    at: 'value',
    found: shown(id),
    accepted,
    message,
  });
}
