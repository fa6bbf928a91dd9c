import { formatQuantity, preferredUnit, quantityKinds } from '@standstill/units';
import type { QuantityKind, UnitSystem } from '@standstill/units';
import type { AssumedValue } from '../results/assumed-value.ts';
import type { Filling } from './filling.ts';

/**
 * What was filled in, as a person of a unit system reads it.
 *
 * @param fillings - of a job
 * @param system - US or metric units
 * @returns one line for each, in the order of the document
 */
export function printFillings(fillings: readonly Filling[], system: UnitSystem): AssumedValue[] {
  return fillings.map(({ path, title, value, reason }) => ({
    path,
    title,
    text: text(value, system),
    reason,
  }));
}

function text(value: Filling['value'], system: UnitSystem): string {
  if (typeof value === 'string') return value;
  const { kind, number, spread } = value;
  const unit = preferredUnit(kind, { system });
  const { dimension } = quantityKinds[kind];
  const central = formatQuantity(number, unit, dimension, spread > 0 ? { interval: spread } : {});
  return spread > 0 ? `${central} ± ${printSpread(spread, kind, unit)}` : central;
}

function printSpread(spread: number, kind: QuantityKind, unit: string): string {
  const { dimension } = quantityKinds[kind];
  const difference = dimension === 'temperature' ? 'temperature-difference' : dimension;
  const spelled = dimension === 'temperature' && unit === '°C' ? 'K' : unit;
  return formatQuantity(spread, spelled, difference, { significantDigits: 1 });
}
