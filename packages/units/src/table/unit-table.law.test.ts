import { unit as oracleUnit } from 'mathjs';
import { expect, test } from 'vitest';
import { fromUnit } from '../convert/from-unit.ts';
import type { Dimension } from '../dimension/dimension.ts';
import { everyUnit } from './every-unit.testing.ts';

/** Our symbol in the words of the independent library; symbols that it reads as they stand are not listed. */
const oracleNames: Readonly<Record<string, string>> = {
  thou: 'mil',
  slug: 'lbf s^2/ft',
  t: 'tonne',
  lb: 'lbm',
  mph: 'mi/h',
  'ft/s': 'ft/s',
  psi: 'lbf/in^2',
  ksi: 'lbf/in^2',
  kn: 'km/h',
  'fl oz': 'floz',
  rpm: 'cycle/minute',
  '°': 'deg',
  '°/s': 'deg/s',
  hp: 'ft lbf/s',
  PS: 'kgf m/s',
  'cm³/ft': 'cm^3/ft',
  yr: 'year',
};

/** What one of our unit is in the oracle's, where that is not 1. */
const oracleFactors: Readonly<Record<string, number>> = { kn: 1.852, hp: 550, PS: 75, ksi: 1000 };

/** Units that the independent library does not have, or rounds: they are held to their definitions below. */
const definedHere = new Set(['inHg', 'mmHg', '1', '%', 'mbar']);

function oracleName(symbol: string, dimension: Dimension): string {
  if (dimension === 'acceleration' && symbol === 'g') return '9.80665 m/s^2';
  if (dimension === 'temperature-difference') return symbol.replace('°', 'deg');
  const known = oracleNames[symbol];
  if (known !== undefined) return known;
  return symbol
    .replaceAll('·', ' ')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('°', 'deg')
    .replaceAll('µ', 'u')
    .replace(/\blb\b/gu, 'lbm')
    .replace(/\bslug\b/gu, 'lbf s^2/ft')
    .replace(/\bpsi\b/gu, '(lbf/in^2)')
    .replace(/\bksi\b/gu, '(lbf/in^2)');
}

const compared = everyUnit.filter(
  ({ dimension, unit }) => dimension !== 'temperature' && !definedHere.has(unit.symbol),
);

test.each(compared)(
  '$dimension $unit.symbol is what an independent library says, to 14 digits',
  ({ dimension, unit }) => {
    const factor = (oracleFactors[unit.symbol] ?? 1) / (unit.symbol.endsWith('/ksi') ? 1000 : 1);
    const name = oracleName(unit.symbol, dimension);
    const given = /^[\d.]+ /u.exec(name)?.[0] ?? '1 ';
    const oracle = oracleUnit(Number(given), name.replace(/^[\d.]+ /u, '')).value * factor;
    expect(Math.abs(fromUnit(1, unit.symbol, dimension) / oracle - 1)).toBeLessThan(1e-14);
  },
);

test.each(['°C', '°F', 'K'])('a temperature in %s is what an independent library says', (symbol) => {
  for (const number of [-40, 0, 32, 68, 451.67, 1200]) {
    const kelvin = oracleUnit(number, symbol.replace('°', 'deg')).toNumber('K');
    expect(fromUnit(number, symbol, 'temperature') + 273.15).toBeCloseTo(kelvin, 10);
  }
});

test('units that the library lacks follow their definitions', () => {
  const pascalPerMeter = 13_595.1 * 9.80665;
  expect(fromUnit(1, 'inHg', 'pressure') / (pascalPerMeter * 0.0254) - 1).toBeCloseTo(0, 14);
  expect(fromUnit(760, 'mmHg', 'pressure')).toBeCloseTo(101_325, 1);
  expect(fromUnit(1000, 'mbar', 'pressure')).toBe(100_000);
  expect(fromUnit(100, '%', 'ratio')).toBe(1);
  expect(fromUnit(1, '1', 'ratio')).toBe(1);
});
