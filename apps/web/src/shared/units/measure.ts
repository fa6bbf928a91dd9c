import {
  formatQuantity,
  formatRange,
  fromUnit,
  preferredUnit,
  quantityKinds,
  toUnit,
  type QuantityKind,
  type UnitPreferences,
} from '@standstill/units';
import type { Estimate } from '@standstill/workshop';

/** Prints one kind of quantity the way this person reads it. */
export interface Measure {
  /** Symbol of the unit. */
  readonly symbol: string;
  /** SI value of one unit; for kinds whose zero is the SI zero. */
  readonly si: number;
  /** The bare figure in this unit, as an axis takes it. */
  readonly inUnit: (value: number) => number;
  /** '118 ft': an estimate shows only the digits that its interval supports, a bare value those of `precision`. */
  readonly text: (value: number | Estimate, precision?: number) => string;
  /** A value that a person stated, converted: four digits. */
  readonly exact: (value: number) => string;
  /** '+9 ft', '−4 ft'. */
  readonly signed: (value: number | Estimate, precision?: number) => string;
  /** '112 to 124 ft'. */
  readonly range: (estimate: Estimate) => string;
}

/** SI half-width that a bare value of a kind is shown to; finer would pretend. */
const grain: { readonly [K in QuantityKind]?: number } = {
  'stopping-distance': 0.65,
  speed: 0.1,
  deceleration: 0.2,
  force: 10,
  'line-pressure': 3e5,
  temperature: 12,
  travel: 0.002,
  share: 0.02,
  time: 0.02,
};

export function measure(kind: QuantityKind, preferences: UnitPreferences): Measure {
  const unit = preferredUnit(kind, preferences);
  const { dimension } = quantityKinds[kind];
  const print = (value: number, interval: number | undefined): string =>
    minus(formatQuantity(value, unit, dimension, { interval }));
  const text = (value: number | Estimate, precision: number | undefined = grain[kind]): string =>
    typeof value === 'number' ? print(value, precision) : print(value.value, halfWidth(value) || precision);
  return {
    symbol: unit,
    si: fromUnit(1, unit, dimension) - fromUnit(0, unit, dimension),
    inUnit: (value) => toUnit(value, unit, dimension),
    text,
    exact: (value) => print(value, undefined),
    signed: (value, precision) => {
      const printed = text(value, precision);
      return printed.startsWith('−') || /^0[^.\d]/.test(printed) ? printed : `+${printed}`;
    },
    range: (estimate) => minus(formatRange(estimate, unit, dimension)),
  };
}

function halfWidth({ low, high }: Estimate): number {
  return Math.abs(high - low) / 2;
}

/** A minus sign that is as wide as a plus, and keeps with its figure. */
function minus(text: string): string {
  return text.replace(/-(?=\d)/g, '−');
}
