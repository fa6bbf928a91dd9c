import { expect, it } from 'vitest';
import { statedConfounders } from './stated-confounders.ts';

it('names what differs by the words of the runs', () => {
  const before = [
    { tires: 'road, worn', surface: 'dry' },
    { tires: 'road, worn', surface: 'damp' },
  ];
  const after = [{ tires: 'semi-slick', surface: 'dry', date: '2026-05-02' }];
  expect(statedConfounders(before, after)).toEqual([
    'tires: road, worn before, semi-slick after',
    'surface: dry, damp before, dry after',
  ]);
});

it('claims nothing where one side says nothing, or both the same', () => {
  expect(statedConfounders([{ tires: 'road' }], [{}])).toEqual([]);
  expect(statedConfounders([{ tires: 'road' }], [{ tires: 'road' }])).toEqual([]);
});
