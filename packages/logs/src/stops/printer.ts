import { formatQuantity, preferredUnit, quantityKinds, type UnitSystem } from '@standstill/units';

/** Prints a quantity of a stop inside a sentence. */
export type Printer = (
  value: number,
  kind: 'speed' | 'deceleration' | 'stopping-distance' | 'temperature',
) => string;

/**
 * A printer for sentences about stops, with two significant digits, temperatures with three.
 *
 * @param system - US or metric units
 * @returns what prints a value in SI
 */
export function printerIn(system: UnitSystem): Printer {
  return (value, kind) =>
    formatQuantity(value, preferredUnit(kind, { system }), quantityKinds[kind].dimension, {
      significantDigits: kind === 'temperature' ? 3 : 2,
    });
}
