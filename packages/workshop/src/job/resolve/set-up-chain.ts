import type { JobDocument, SetUpDocument } from '../document/job-document.ts';

/** The set-up and those that it is based on, itself first. */
export function chainOf(document: JobDocument, id: string): string[] {
  const chain = [id];
  for (;;) {
    const next = document.setUps[chain.at(-1) ?? '']?.basedOn;
    if (next === undefined || !Object.hasOwn(document.setUps, next) || chain.includes(next)) return chain;
    chain.push(next);
  }
}

/** A set-up that is known to be there. */
export function setUpOf(document: JobDocument, id: string): SetUpDocument {
  const setUp = document.setUps[id];
  if (setUp === undefined) throw new TypeError(`no set-up ${id}`);
  return setUp;
}
