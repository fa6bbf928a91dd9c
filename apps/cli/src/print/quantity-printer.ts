import {
  formatQuantity,
  formatRange,
  lastPlace,
  preferredUnit,
  printNumber,
  quantityKinds,
  toUnit,
  withUnit,
  type QuantityKind,
  type UnitSystem,
} from '@standstill/units';
import type { Estimate } from '@standstill/workshop';

/** Prints quantities in the units of one person; a missing one as '–'. */
export interface QuantityPrinter {
  /** '118 ft'; with the half-width of its interval no digit that it does not support. */
  readonly quantity: (value: number | null, kind: QuantityKind, halfWidth?: number) => string;
  /** '118 (115 to 121) ft'. */
  readonly estimate: (value: Estimate | null, kind: QuantityKind) => string;
  /** The same for a difference: shorter and longer are said by the sign. */
  readonly difference: (value: Estimate | null, kind: QuantityKind) => string;
}

/** Of what has no interval: more would claim more than anybody knows. */
const threeDigits = 3;

export function quantityPrinter(system: UnitSystem): QuantityPrinter {
  const unitOf = (kind: QuantityKind): string => preferredUnit(kind, { system });
  const estimate = (value: Estimate | null, kind: QuantityKind): string => {
    if (value === null) return '–';
    const halfWidth = (value.high - value.low) / 2;
    const { dimension } = quantityKinds[kind];
    if (!(halfWidth > 0))
      return formatQuantity(value.value, unitOf(kind), dimension, { significantDigits: threeDigits });
    return withInterval(value, unitOf(kind), kind);
  };
  return {
    quantity: (value, kind, halfWidth) =>
      value === null
        ? '–'
        : realMinus(
            formatQuantity(value, unitOf(kind), quantityKinds[kind].dimension, { interval: halfWidth }),
          ),
    estimate: (value, kind) => realMinus(estimate(value, kind)),
    difference: (value, kind) => {
      const text = realMinus(estimate(value, kind));
      return value !== null && value.value > 0 && !/^0(?:\.0*)?[ (]/u.test(text) ? `+${text}` : text;
    },
  };
}

function withInterval({ value, low, high }: Estimate, unit: string, kind: QuantityKind): string {
  const { dimension } = quantityKinds[kind];
  const place = lastPlace((toUnit(high, unit, dimension) - toUnit(low, unit, dimension)) / 2);
  const range = withoutUnit(formatRange({ low, high }, unit, dimension), unit);
  return withUnit(`${printNumber(toUnit(value, unit, dimension), place)} (${range})`, unit);
}

/** A plain number has no unit to take off. */
function withoutUnit(text: string, unit: string): string {
  return text.endsWith(` ${unit}`) && unit !== '1' ? text.slice(0, -unit.length - 1) : text;
}

/** Where signs matter, minus is a minus and not a hyphen. */
export function realMinus(text: string): string {
  return text.replace(/-(?=\d)/gu, '−');
}
