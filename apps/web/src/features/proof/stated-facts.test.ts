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

  it('names what nobody stated, and has no words where all is', () => {
    const alike = run({ date: 'd', tires: 't', surface: 's', notes: 'n' });
    expect(statedWords(statedFacts([alike], [alike]))).toEqual([]);
    const words = statedWords(statedFacts([alike], [run({ date: 'e', tires: 't' })]));
    expect(words).toHaveLength(1);
    expect(words[0]).toMatch(/^Not stated.*: surface; driver/);
  });
});
