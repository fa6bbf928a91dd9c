import { measure } from '../../../shared/units/measure.ts';
import type { QuantityKind, UnitPreferences } from '@standstill/units';
import type { Estimate } from '@standstill/workshop';

/** Kinds by the SI unit that a result names. */
const kinds: Readonly<Record<string, QuantityKind>> = {
  m: 'stopping-distance',
  s: 'time',
  N: 'force',
  Pa: 'line-pressure',
  kg: 'car-mass',
  'm/s': 'speed',
  'm/s²': 'deceleration',
  '°C': 'temperature',
};

/** '0.92 (0.88 to 0.96)', in the person's unit where they have one for it, else in the unit that the result names. */
export function printByUnit(estimate: Estimate, unit: string, preferences: UnitPreferences): string {
  const kind = kinds[unit];
  if (kind === undefined) return plain(estimate, unit);
  const { text, range } = measure(kind, preferences);
  return `${text(estimate)} (${range(estimate)})`;
}

/** Two digits of the interval, and as many places of the value. */
function plain({ value, low, high }: Estimate, unit: string): string {
  const half = Math.abs(high - low) / 2;
  const print =
    half > 1e-3 && half < 1e4
      ? (one: number) => one.toFixed(Math.max(0, 1 - Math.floor(Math.log10(half))))
      : (one: number) => String(Number(one.toPrecision(2)));
  const words = `${print(value)} (${print(low)} to ${print(high)})`.replaceAll('-', '−');
  return unit === '' || unit === '1' ? words : `${words} ${unit}`;
}
