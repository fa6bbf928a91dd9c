import type { JobSets, RunSet } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { fadeSources, shownSources } from './fade-sources.ts';

const set = (name: string): RunSet => ({ name, reports: [] });
const pair = { before: 'found', after: 'kit' };
const sets = {
  fades: [
    { setUp: 'found', set: set('found') },
    { setUp: 'kit', set: set('kit') },
  ],
  before: set('found'),
  after: null,
} as unknown as JobSets;
const sources = fadeSources(sets, pair, (id) => id.toUpperCase());
const none = { set: null, against: null };

describe('what is looked at for fade', () => {
  it('is every fade run, then the sets that are there', () => {
    expect(sources.map(({ id, title }) => [id, title])).toEqual([
      ['fade found', 'fade run, FOUND'],
      ['fade kit', 'fade run, KIT'],
      ['before', 'stops before, FOUND'],
    ]);
    expect(fadeSources(null, pair, String)).toEqual([]);
  });

  it('sets the fade runs against each other unless somebody chose', () => {
    const ids = ({ set: a, against: b }: ReturnType<typeof shownSources>) => [a?.id, b?.id];
    expect(ids(shownSources(sources, none))).toEqual(['fade found', 'fade kit']);
    expect(ids(shownSources(sources, { set: null, against: '' }))).toEqual(['fade found', undefined]);
    expect(ids(shownSources(sources, { set: 'before', against: null }))).toEqual(['before', undefined]);
    expect(ids(shownSources(sources, { set: 'before', against: 'before' }))).toEqual(['before', undefined]);
    expect(ids(shownSources([], none))).toEqual([undefined, undefined]);
  });
});
