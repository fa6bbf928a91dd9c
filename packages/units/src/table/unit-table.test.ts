import { expect, test } from 'vitest';
import { spellingKey } from '../read/spelling-key.ts';
import { parseQuantity } from '../read/parse-quantity.ts';
import { dimensionWords } from '../dimension/dimension-words.ts';
import { dimensions } from '../dimension/dimensions.ts';
import { fromUnit } from '../convert/from-unit.ts';
import { everyUnit } from './every-unit.testing.ts';
import { unitTable } from './unit-table.ts';

test('no two units of a dimension share a spelling', () => {
  for (const dimension of dimensions) {
    const owner = new Map<string, string>();
    for (const unit of unitTable[dimension]) {
      for (const text of [unit.symbol, ...unit.spellings]) {
        const key = spellingKey(text);
        expect(owner.get(key) ?? unit.symbol, `${dimension}: ${text}`).toBe(unit.symbol);
        owner.set(key, unit.symbol);
      }
    }
  }
});

test('every dimension has a unit that is worth exactly 1', () => {
  for (const dimension of dimensions) {
    const ones = unitTable[dimension].filter((unit) => unit.times === unit.over && unit.zero === 0);
    expect(ones.length, `units worth 1 of ${dimension}`).toBeGreaterThan(0);
  }
});

test('every example that a person is shown can be read', () => {
  for (const dimension of dimensions) {
    for (const example of dimensionWords[dimension].examples) {
      expect(parseQuantity(example, dimension).ok, `${example} as ${dimension}`).toBe(true);
    }
  }
});

test('the table holds the units that the trade uses', () => {
  expect(everyUnit.length).toBeGreaterThan(100);
  expect(fromUnit(1, 'lbf', 'force')).toBe(4.4482216152605);
  expect(fromUnit(60, 'mph', 'speed')).toBe(26.8224);
  expect(fromUnit(355.6, 'mm', 'length')).toBe(0.3556);
  expect(fromUnit(14, 'in', 'length')).toBe(0.3556);
  expect(fromUnit(32, '°F', 'temperature')).toBe(0);
  expect(fromUnit(-40, '°F', 'temperature')).toBe(-40);
  expect(fromUnit(18, '°F', 'temperature-difference')).toBe(10);
});

/** SI units as the set-up record states them, each with what the field measures. */
const setUpFields = [
  ['kg', 'mass'],
  ['m', 'length'],
  ['1', 'ratio'],
  ['m²', 'area'],
  ['kg m²', 'moment-of-inertia'],
  ['m³/Pa', 'volume-compliance'],
  ['m³', 'volume'],
  ['m³ per m', 'volume-per-length'],
  ['Pa', 'pressure'],
  ['°C', 'temperature'],
  ['N', 'force'],
  ['s', 'time'],
  ['m/s', 'speed'],
  ['m/Pa', 'length-compliance'],
  ['m/N', 'flex'],
  ['J/(kg K)', 'specific-heat'],
  ['J/(kg K²)', 'specific-heat-slope'],
  ['W/(m K)', 'conductivity'],
  ['kg/m³', 'density'],
] as const;

test.each(setUpFields)('a set-up field in %s can be written', (unit, dimension) => {
  expect(parseQuantity(unit === '1' ? '0.25' : `0.25 ${unit}`, dimension)).toMatchObject({
    ok: true,
    value: 0.25,
  });
});
