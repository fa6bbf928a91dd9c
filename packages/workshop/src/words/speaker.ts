import { formatQuantity, formatRange, preferredUnit, quantityKinds } from '@standstill/units';
import type { QuantityKind, UnitSystem } from '@standstill/units';
import type { Estimate } from '../results/estimate.ts';

/** Prints quantities inside sentences, in one unit system, with no more digits than the interval supports. */
export interface Speaker {
  /** `60 mph`. */
  readonly plain: (value: number, kind: QuantityKind) => string;
  /** `1 ft`: one digit, for limits of notice. */
  readonly rough: (value: number, kind: QuantityKind) => string;
  /** `970 °F`: to so many digits. */
  readonly rounded: (value: number, kind: QuantityKind, digits: number) => string;
  /** `118 ft`, rounded to what the interval supports. */
  readonly central: (estimate: Estimate, kind: QuantityKind) => string;
  /** `3 to 9 ft`; ends may come in any order and sign. */
  readonly range: (low: number, high: number, kind: QuantityKind) => string;
}

/**
 * A printer for sentences.
 *
 * @param system - US or metric units
 * @returns the printer
 */
export function speaker(system: UnitSystem): Speaker {
  const unitOf = (kind: QuantityKind): string => preferredUnit(kind, { system });
  return {
    plain: (value, kind) =>
      formatQuantity(value, unitOf(kind), quantityKinds[kind].dimension, { significantDigits: 3 }),
    rough: (value, kind) =>
      formatQuantity(value, unitOf(kind), quantityKinds[kind].dimension, { significantDigits: 1 }),
    rounded: (value, kind, significantDigits) =>
      formatQuantity(value, unitOf(kind), quantityKinds[kind].dimension, { significantDigits }),
    central: ({ value, low, high }, kind) =>
      formatQuantity(value, unitOf(kind), quantityKinds[kind].dimension, { interval: (high - low) / 2 }),
    range: (low, high, kind) =>
      realMinus(
        formatRange(
          { low: Math.min(low, high), high: Math.max(low, high) },
          unitOf(kind),
          quantityKinds[kind].dimension,
        ),
      ),
  };
}

/** A minus is a minus and not a hyphen. */
function realMinus(text: string): string {
  return text.replaceAll(/-(?=\d)/gu, '−');
}
