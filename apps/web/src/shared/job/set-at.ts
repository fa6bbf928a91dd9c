/** One step into a document: a key of a mapping or an index of a list. */
export type Step = string | number;

/** 'parts.0.bore' as steps; figures become list indices. */
export function stepsOf(path: string): readonly Step[] {
  return path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** The value at a path, or undefined where any step is missing. */
export function valueAt(document: unknown, path: string): unknown {
  let here: unknown = document;
  for (const step of stepsOf(path)) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<Step, unknown>)[step];
  }
  return here;
}

/** A copy of the document with one value changed; `undefined` takes the key out. Untouched branches are shared. */
export function setAt<T>(document: T, path: string, value: unknown): T {
  return setSteps(document, stepsOf(path), value) as T;
}

function setSteps(here: unknown, steps: readonly Step[], value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  const copy = emptyLike(here, step);
  const next = setSteps((copy as Record<Step, unknown>)[step], rest, value);
  if (next !== undefined) (copy as Record<Step, unknown>)[step] = next;
  else if (Array.isArray(copy)) copy.splice(Number(step), 1);
  else delete (copy as Record<Step, unknown>)[step];
  return copy;
}

function emptyLike(here: unknown, step: Step): object {
  if (Array.isArray(here)) return [...(here as unknown[])];
  if (typeof here === 'object' && here !== null) return { ...here };
  return typeof step === 'number' ? [] : {};
}
