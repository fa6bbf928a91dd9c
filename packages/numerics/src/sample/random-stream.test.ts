import { expect, test } from 'vitest';
import { randomStream, type RandomStream } from './random-stream.ts';

function first(stream: RandomStream, count = 5): number[] {
  return Array.from({ length: count }, () => stream.uniform());
}

test('the same seed and path give the same numbers, any other gives others', () => {
  expect(first(randomStream(7, 'car/mass'))).toEqual(first(randomStream(7, 'car/mass')));
  const others = [
    randomStream(8, 'car/mass'),
    randomStream(7, 'car/mas'),
    randomStream(7),
    randomStream(7.5, 'car/mass'),
    randomStream(-7, 'car/mass'),
  ];
  const starts = others.map((stream) => stream.uniform());
  expect(new Set([randomStream(7, 'car/mass').uniform(), ...starts]).size).toBe(others.length + 1);
});

test('a child depends on its path, not on what was read before', () => {
  const fresh = randomStream(3);
  const read = randomStream(3);
  first(read, 1000);
  expect(first(read.child('tire').child('grip'))).toEqual(first(fresh.child('tire/grip')));
  expect(first(read.child('tire'))).toEqual(first(randomStream(3, 'tire')));
});

test('a shuffle keeps what is there, and integers stay below their limit', () => {
  const items = Float64Array.from({ length: 50 }, (_, i) => i);
  randomStream(1).shuffle(items);
  expect([...items]).not.toEqual([...items].sort((a, b) => a - b));
  expect([...items].sort((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, i) => i));
  const stream = randomStream(2);
  const seen = new Set(Array.from({ length: 1000 }, () => stream.below(6)));
  expect([...seen].sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5]);
  expect(stream.below(1)).toBe(0);
});

test('a seed that is no number and an empty choice are refused', () => {
  expect(() => randomStream(Number.NaN)).toThrow('seed is NaN');
  expect(() => randomStream(1).below(0)).toThrow('count is 0');
});
