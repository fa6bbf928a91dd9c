import { describe, expect, it } from 'vitest';
import { factsOf, keepWhatApplies } from './part-kinds.ts';

const keys = (...args: Parameters<typeof factsOf>): string[] => factsOf(...args).map(([key]) => key);

describe('factsOf', () => {
  it('asks only what the type has', () => {
    expect(keys('booster', 'hydraulic')).toEqual(['gain', 'greatestAssist']);
    expect(keys('booster', 'vacuum')).not.toContain('greatestAssist');
    expect(keys('master-cylinder', 'balance-bar')).not.toContain('bore');
    expect(keys('rotor', 'solid')).not.toContain('cheekThickness');
    expect(keys('rotor', 'vented')).toContain('cheekThickness');
  });

  it('takes a cylinder without a type for a tandem one, as the document does', () => {
    expect(keys('master-cylinder', undefined)).toEqual(keys('master-cylinder', 'tandem'));
    expect(keys('master-cylinder', undefined)).toContain('primaryStroke');
    expect(keys('master-cylinder', 'balance-bar')).not.toContain('primaryStroke');
  });
});

describe('keepWhatApplies', () => {
  it('keeps title and what both types have, drops what the new type has not', () => {
    const booster = { kind: 'booster', title: 'B', type: 'vacuum', gain: '4', vacuum: '20 inHg' } as const;
    expect(keepWhatApplies(booster, 'hydraulic')).toEqual({
      kind: 'booster',
      title: 'B',
      type: 'hydraulic',
      gain: '4',
    });
  });
});
