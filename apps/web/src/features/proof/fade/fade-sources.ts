import type { JobSets, RunSet } from '@standstill/workshop';

/** Stops that may be looked at for fade. */
export interface FadeSource {
  readonly id: string;
  readonly title: string;
  /** Null where the job does not say which set-up was driven. */
  readonly setUp: string | null;
  readonly set: RunSet;
}

/** What there is to look at: the fade runs first, then the sets of the comparison, which are driven in a row too. */
export function fadeSources(
  sets: JobSets | null,
  pair: { readonly before: string; readonly after: string },
  titleOf: (setUp: string) => string,
): readonly FadeSource[] {
  if (!sets) return [];
  const fades = sets.fades.map(({ setUp, set }) => {
    const title = setUp === null ? set.name : titleOf(setUp);
    return { id: `fade ${setUp ?? ''}`, title: `fade run, ${title}`, setUp, set: { ...set, name: title } };
  });
  const sides = [
    { id: 'before', set: sets.before, setUp: pair.before },
    { id: 'after', set: sets.after, setUp: pair.after },
  ].flatMap(({ id, set, setUp }) =>
    set
      ? [{ id, title: `stops ${id}, ${titleOf(setUp)}`, setUp, set: { ...set, name: titleOf(setUp) } }]
      : [],
  );
  return [...fades, ...sides];
}

/** Which of them are shown: as chosen, else the fade run before against the one after, else the first there is. */
export function shownSources(
  sources: readonly FadeSource[],
  chosen: { readonly set: string | null; readonly against: string | null },
): { readonly set: FadeSource | null; readonly against: FadeSource | null } {
  const named = (id: string | null) => sources.find((source) => source.id === id) ?? null;
  const set = named(chosen.set) ?? sources[0] ?? null;
  const isFade = (source: FadeSource) => source.id.startsWith('fade');
  const other = sources.find((source) => source !== set && set !== null && isFade(set) && isFade(source));
  const against = chosen.against === '' ? null : (named(chosen.against) ?? other ?? null);
  return { set, against: against === set ? null : against };
}
