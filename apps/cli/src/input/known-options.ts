/** Leaves out what was not given, so that the workshop's own defaults hold. */
export function knownOptions<T extends object>(options: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  const known: { [K in keyof T]?: Exclude<T[K], undefined> } = {};
  for (const key of Object.keys(options) as (keyof T)[]) {
    if (options[key] !== undefined) known[key] = options[key] as Exclude<T[keyof T], undefined>;
  }
  return known;
}
