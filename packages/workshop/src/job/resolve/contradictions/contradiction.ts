import { formatQuantity, preferredUnit, quantityKinds } from '@standstill/units';
import type { Dimension, QuantityKind } from '@standstill/units';
import { printBound } from '../../document/print-bound.ts';
import type { Known } from '../../known.ts';
import type { Finding } from '../../reading/finding.ts';

/** Two facts that can each be true but not together. */
export interface Clash {
  /** The fact that is named; its place is the place of the mistake. */
  readonly known: Known;
  readonly kind: QuantityKind;
  /** Why it can't be, reads on after the value: `outside the rotor of 11.8 in (300 mm)`. */
  readonly why: string;
  /** What can be: `at most 11.8 in (300 mm)`. */
  readonly accepted: string;
}

/** The mistake in one line: what is stated, why it can't be, what can be. */
export function contradiction({ known, kind, why, accepted }: Clash): Finding {
  const steps = known.path.split(/[.[\]]+/).filter((step) => step !== '');
  const found = amount(known.value, kind);
  return {
    code: 'contradiction',
    path: steps.map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
    at: 'value',
    found,
    accepted,
    message: `${known.path} is ${found}, ${why}; accepted is ${accepted}`,
  };
}

/** A number in both systems of units, since the job may be written in either: `11.8 in (300 mm)`. */
export function amount(value: number, kind: QuantityKind): string {
  return inBoth((unit, dimension) => formatQuantity(value, unit, dimension, { significantDigits: 3 }), kind);
}

/** The greatest value that agrees with the other facts. */
export function atMost(value: number, kind: QuantityKind): string {
  return `at most ${bound(value, kind, 'high')}`;
}

/** The least value that agrees with the other facts. */
export function atLeast(value: number, kind: QuantityKind): string {
  return `at least ${bound(value, kind, 'low')}`;
}

/** From the least to the greatest value that agree with the other facts. */
export function within(low: number, high: number, kind: QuantityKind): string {
  return `${bound(low, kind, 'low')} to ${bound(high, kind, 'high')}`;
}

/** Rounded into what is accepted, in both systems of units. */
function bound(value: number, kind: QuantityKind, end: 'low' | 'high'): string {
  return inBoth((unit, dimension) => printBound(value, unit, dimension, end), kind);
}

function inBoth(print: (unit: string, dimension: Dimension) => string, kind: QuantityKind): string {
  const { dimension } = quantityKinds[kind];
  const [us, metric] = (['us', 'metric'] as const).map((system) =>
    print(preferredUnit(kind, { system }), dimension),
  );
  return us === metric ? `${us}` : `${us} (${metric})`;
}
