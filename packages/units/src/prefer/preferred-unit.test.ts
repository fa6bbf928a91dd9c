import { expect, test } from 'vitest';
import { unitBySymbol } from '../convert/unit-by-symbol.ts';
import { UnknownUnitError } from '../convert/unknown-unit-error.ts';
import { preferredUnit } from './preferred-unit.ts';
import { quantityKinds } from './quantity-kinds.ts';

test('every preferred unit is a unit of its kind, under its own symbol', () => {
  for (const row of Object.values(quantityKinds)) {
    expect(unitBySymbol(row.us, row.dimension).symbol).toBe(row.us);
    expect(unitBySymbol(row.metric, row.dimension).symbol).toBe(row.metric);
  }
});

test('the US mix is mixed as the trade mixes it', () => {
  const us = { system: 'us' } as const;
  expect(preferredUnit('stopping-distance', us)).toBe('ft');
  expect(preferredUnit('part-length', us)).toBe('in');
  expect(preferredUnit('socket', us)).toBe('mm');
  expect(preferredUnit('torque', us)).toBe('lbf·ft');
  expect(preferredUnit('line-pressure', { system: 'metric' })).toBe('bar');
});

test('one kind can be switched alone', () => {
  const mine = { system: 'us', own: { torque: 'Nm' } } as const;
  expect(preferredUnit('torque', mine)).toBe('N·m');
  expect(preferredUnit('force', mine)).toBe('lbf');
  expect(() => preferredUnit('torque', { system: 'us', own: { torque: 'psi' } })).toThrow(UnknownUnitError);
});
