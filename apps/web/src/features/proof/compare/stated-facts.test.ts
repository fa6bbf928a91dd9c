import type { RunDocument } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { statedFacts, statedWords } from './stated-facts.ts';

const run = (facts: Partial<RunDocument>): RunDocument => ({ id: 'r', setUp: 's', log: 'l', ...facts });
const told = (before: readonly RunDocument[], after: readonly RunDocument[]) =>
  Object.fromEntries(statedFacts(before, after).map((fact) => [fact.title, fact.told]));
const day = { date: '2026-05-09', surface: 'dry', driver: 'A', startTemperature: '180 °F' };

describe('statedFacts', () => {
  it('says what differs and what is the same', () => {
    expect(told([run({ ...day, tires: 'old' })], [run({ ...day, tires: 'new' })])).toEqual({
      Date: 'same',
      Tires: 'differs',
      Surface: 'same',
      Driver: 'same',
      'Rotors at the start': 'same',
    });
  });

  it('what one log of a set leaves out is not known to be alike', () => {
    const facts = statedFacts([run({ tires: 'old' }), run({ tires: '  ' })], [run({ tires: 'old' })]);
    expect(facts[1]).toMatchObject({ before: 'old; not stated', after: 'old', told: 'not stated' });
  });

  it('shows wind and the like only where a run speaks of it, with its unit', () => {
    const wind = { headWind: { value: '5 mph', origin: 'measured' as const } };
    const facts = statedFacts([run(wind)], [run({ headWind: { value: -3, unit: 'mph' } })]);
    expect(facts.find(({ key }) => key === 'headWind')).toEqual({
      key: 'headWind',
      title: 'Head wind',
      before: '5 mph',
      after: '-3 mph',
      told: 'differs',
    });
    expect(facts.some(({ key }) => key === 'logger')).toBe(false);
  });

  it('names what nobody stated, and has no words where all is', () => {
    const alike = run({ ...day, tires: 't' });
    expect(statedWords(statedFacts([alike], [alike]))).toEqual([]);
    const words = statedWords(statedFacts([alike], [run({ date: 'e', tires: 't' })]));
    expect(words).toHaveLength(1);
    expect(words[0]).toMatch(/^Not stated.*: surface; driver; rotors at the start/);
  });
});
