import { describe, expect, test } from 'vitest';
import type { Dimension } from '../dimension/dimension.ts';
import { parseQuantity } from './parse-quantity.ts';

function value(text: string, dimension: Dimension): number {
  const reading = parseQuantity(text, dimension);
  if (!reading.ok) throw new Error(`${text} was refused: ${reading.code}`);
  return reading.value;
}

function code(text: string, dimension: Dimension): string {
  const reading = parseQuantity(text, dimension);
  return reading.ok ? `read as ${reading.value}` : reading.code;
}

describe('spellings of one torque', () => {
  const spellings = [
    'lbf·ft',
    'lbf.ft',
    'lb-ft',
    'ft·lbf',
    'ft-lb',
    'ft lbf',
    'lb ft.',
    'ft-lbs',
    'foot-pounds',
    'FT-LB',
    'ftlbs',
    'lbf⋅ft',
  ];
  test.each(spellings)('85 %s', (unit) => {
    expect(value(`85 ${unit}`, 'torque')).toBe(value('85 lbf·ft', 'torque'));
    expect(value(`85 ${unit}`, 'torque')).toBeCloseTo(115.244525608169, 12);
  });
});

describe('numbers as people write them', () => {
  test.each([
    ['14"', 0.3556],
    ['14 in', 0.3556],
    ['14”', 0.3556],
    ['14 in.', 0.3556],
    ['5/8 in', 0.015875],
    ['5/8-inch', 0.015875],
    ['1 1/2 in', 0.0381],
    ['1-1/2"', 0.0381],
    ['1½ in', 0.0381],
    ['0,5 m', 0.5],
    ['0,300 m', 0.3],
    ['1,300 mm', 1.3],
    ['1,300.5 mm', 1.3005],
    ['12,345,678 mm', 12_345.678],
    ['1 300 mm', 1.3],
    ['1\u202f300\u00a0mm', 1.3],
    ['1234,5 mm', 1.2345],
    ['.5 in', 0.0127],
    ['5. in', 0.127],
    ['1.5e-3 m', 0.0015],
    ['+5 mm', 0.005],
    ['−3 mm', -0.003],
    ['- 3 mm', -0.003],
    ['-1 1/2 in', -0.0381],
    ["6'", 1.8288],
  ])('%s', (text, meters) => {
    expect(value(text, 'length')).toBe(meters);
  });

  test('thousands of a mass', () => {
    expect(parseQuantity('1,300 kg', 'mass')).toEqual({ ok: true, value: 1300, unit: 'kg', number: 1300 });
  });
});

describe('temperatures and their differences', () => {
  test.each(['350 °C', '350 C', '350 degC', '350 deg C', '350°C', '350 ºC', '350 ° C', '350 c'])(
    '%s',
    (text) => {
      expect(value(text, 'temperature')).toBe(350);
    },
  );

  test('the same words are another quantity where a difference is wanted', () => {
    expect(value('90 °F', 'temperature')).toBeCloseTo(32.2222222222222, 12);
    expect(value('90 °F', 'temperature-difference')).toBe(50);
    expect(value('300 K', 'temperature')).toBeCloseTo(26.85, 12);
    expect(value('300 K', 'temperature-difference')).toBe(300);
  });
});

describe('ratios', () => {
  test.each([
    ['53 %', 0.53],
    ['53%', 0.53],
    ['0.53', 0.53],
    ['0,53', 0.53],
    ['−3\u00a0%', -0.03],
    ['4.1:1', 4.1],
    ['5/8', 0.625],
  ])('%s', (text, ratio) => {
    expect(value(text, 'ratio')).toBe(ratio);
  });
});

describe('the field decides what a word means', () => {
  test('a pound is a mass or a force', () => {
    expect(value('100 lb', 'mass')).toBe(45.359237);
    expect(value('100 lb', 'force')).toBeCloseTo(444.82216152605, 11);
  });

  test('g is a mass or an acceleration', () => {
    expect(value('0.9 g', 'mass')).toBe(0.0009);
    expect(value('0.9 g', 'acceleration')).toBeCloseTo(8.825985, 12);
  });

  test('a weight in kg is never taken for a force', () => {
    expect(code('100 kg', 'force')).toBe('wrong-dimension');
  });
});

describe('compound units', () => {
  test.each([
    '45 W/(m·K)',
    '45 W/(m K)',
    '45 W/m/K',
    '45 W/mK',
    '45 W m^-1 K^-1',
    '45 W·m⁻¹·K⁻¹',
    '45 W/(m·°C)',
  ])('%s', (text) => {
    expect(value(text, 'conductivity')).toBe(45);
  });

  test('hose growth', () => {
    expect(value('0.3 cc/ft', 'volume-per-length')).toBeCloseTo(9.84251968503937e-7, 20);
    expect(value('0.3 cm³ per ft', 'volume-per-length')).toBe(value('0.3 cc/ft', 'volume-per-length'));
    expect(value('1 mm²', 'volume-per-length')).toBe(1e-6);
  });

  test('capitals do not matter, except between milli and mega', () => {
    expect(value('10 KPA', 'pressure')).toBe(10_000);
    expect(value('14 MM', 'length')).toBe(0.014);
    expect(value('60 Mph', 'speed')).toBe(value('60 mph', 'speed'));
    expect(code('10 mPa', 'pressure')).toBe('unknown-unit');
    expect(code('14 Mm', 'length')).toBe('unknown-unit');
    expect(code('5 kN', 'speed')).toBe('wrong-dimension');
  });
});

describe('what is refused', () => {
  test.each([
    ['', 'length', 'empty'],
    ['   ', 'length', 'empty'],
    ['abc', 'length', 'bad-number'],
    ['--5 mm', 'length', 'bad-number'],
    ['10 20 mm', 'length', 'bad-number'],
    ['3/0 in', 'length', 'bad-number'],
    ['~5 mm', 'length', 'bad-number'],
    ['5, mm', 'length', 'bad-number'],
    ['1.300,5 mm', 'length', 'ambiguous-number'],
    ['1,30,000 mm', 'length', 'ambiguous-number'],
    ['1.300.000 mm', 'length', 'ambiguous-number'],
    ['1e999 m', 'length', 'not-finite'],
    ['1e308 km', 'length', 'not-finite'],
    ['14', 'length', 'missing-unit'],
    ['14 in', 'pressure', 'wrong-dimension'],
    ['94 inn', 'length', 'unknown-unit'],
    ['5 ft 3 in', 'length', 'unknown-unit'],
    ['10 psi abs', 'pressure', 'unknown-unit'],
    ['200 % kg', 'ratio', 'unknown-unit'],
  ] as const)('%j as %s: %s', (text, dimension, expected) => {
    expect(code(text, dimension)).toBe(expected);
  });

  test('a refusal says what was found and what would be read', () => {
    expect(parseQuantity('94 inn', 'length')).toMatchObject({
      code: 'unknown-unit',
      found: '94 inn',
      foundUnit: 'inn',
      nearest: 'in',
      accepted: { example: '14 in', units: expect.arrayContaining(['in', 'mm', 'ft', 'm']) as unknown },
    });
    expect(parseQuantity('14 in', 'pressure')).toMatchObject({
      foundDimension: 'length',
      dimension: 'pressure',
    });
  });
});
