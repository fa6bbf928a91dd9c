import type { QuantityKind, UnitPreferences } from '@standstill/units';
import type { LogReport } from '@standstill/workshop';
import { measure } from '../../../shared/units/measure.ts';

const kinds: Readonly<Record<string, QuantityKind>> = {
  speed: 'speed',
  'wheel-speed': 'speed',
  'acceleration-forward': 'deceleration',
  'acceleration-lateral': 'deceleration',
  'acceleration-vertical': 'deceleration',
  'brake-pressure': 'line-pressure',
  'pedal-force': 'force',
  'pedal-travel': 'travel',
  temperature: 'temperature',
  altitude: 'stopping-distance',
  distance: 'stopping-distance',
};

/** What the values of a channel go from and to, in the person's unit: a wrong column or unit shows at a glance. */
export function channelRange(
  { quantity, range }: LogReport['channels'][number],
  preferences: UnitPreferences,
): string {
  if (!range) return '–';
  const { low, high } = range;
  const kind = kinds[quantity];
  if (kind === undefined) return `${plain(low)} to ${plain(high)}`;
  const { text, symbol } = measure(kind, preferences);
  const precision = Math.max(Math.abs(low), Math.abs(high), Number.MIN_VALUE) / 100;
  return `${text(low, precision).replace(` ${symbol}`, '')} to ${text(high, precision)}`;
}

function plain(value: number): string {
  return String(Number(value.toPrecision(5))).replace('-', '−');
}
