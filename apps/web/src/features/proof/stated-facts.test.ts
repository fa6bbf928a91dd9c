import type { RunDocument } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { statedFacts, statedWords } from './stated-facts.ts';

const run = (facts: Partial<RunDocument>): RunDocument => ({ id: 'r', setUp: 's', log: 'l', ...facts });
const told = (before: readonly RunDocument[], after: readonly RunDocument[]) =>
  Object.fromEntries(statedFacts(before, after).map((fact) => [fact.title, fact.told]));

describe('statedFacts', () => {
  it('says what differs and what is the same', () => {
    const all = { date: '2026-05-09', surface: 'dry', notes: 'driver A' };
    expect(told([run({ ...all, tires: 'old' })], [run({ ...all, tires: 'new' })])).toEqual({
      Date: 'same',
      Tires: 'differs',
      Surface: 'same',
      'Driver, rotor temperature, weather': 'same',
    });
  });

  it('what one log of a set leaves out is not known to be alike', () => {
    const facts = statedFacts([run({ tires: 'old' }), run({ tires: '  ' })], [run({ tires: 'old' })]);
    expect(facts[1]).toMatchObject({ before: 'old; not stated', after: 'old', told: 'not stated' });
  });

  it('puts both into words, and has none where all is stated and alike', () => {
    const alike = run({ date: 'd', tires: 't', surface: 's', notes: 'n' });
    expect(statedWords(statedFacts([alike], [alike]))).toEqual([]);
    const words = statedWords(statedFacts([alike], [run({ date: 'e', tires: 't' })]));
    expect(words[0]).toMatch(/^Also different.*: date\.$/);
    expect(words[1]).toMatch(/^Not stated.*: surface; driver/);
  });
});
