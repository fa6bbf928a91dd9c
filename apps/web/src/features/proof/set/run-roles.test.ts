import type { RunDocument } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { placeOf, withRole } from './run-roles.ts';

const pair = { before: 'found', after: 'kit' };
const run = (setUp: string, role?: RunDocument['role']): RunDocument => ({
  id: 'r',
  setUp,
  log: 'l',
  ...(role ? { role } : {}),
});

describe('placeOf', () => {
  it('goes by the set-up where the role is before, after or left out', () => {
    expect(placeOf(run('found'), pair)).toBe('before');
    expect(placeOf(run('kit', 'before'), pair)).toBe('after');
    expect(placeOf(run('other', 'after'), pair)).toBeNull();
  });

  it('keeps a repeat, a reference car and a fade run out of both sets', () => {
    expect(placeOf(run('found', 'repeat'), pair)).toBe('repeat');
    expect(placeOf(run('kit', 'repeat'), pair)).toBeNull();
    expect(placeOf(run('other', 'reference-after'), pair)).toBe('reference-after');
    expect(placeOf(run('kit', 'fade'), pair)).toBe('fade');
    expect(placeOf(run('other', 'fade'), pair)).toBeNull();
  });
});

it('a role brings its set-up along; a fade run keeps its own', () => {
  expect(withRole(run('kit'), 'repeat', pair)).toMatchObject({ role: 'repeat', setUp: 'found' });
  expect(withRole(run('found', 'repeat'), 'after', pair)).toEqual({ id: 'r', setUp: 'kit', log: 'l' });
  expect(withRole(run('kit'), 'fade', pair)).toMatchObject({ role: 'fade', setUp: 'kit' });
});
