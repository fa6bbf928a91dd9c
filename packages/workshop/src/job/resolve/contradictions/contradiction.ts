import { formatQuantity, preferredUnit, quantityKinds } from '@standstill/units';
import type { QuantityKind } from '@standstill/units';
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
  const [us, metric] = (['us', 'metric'] as const).map((system) => {
    const unit = preferredUnit(kind, { system });
    return formatQuantity(value, unit, quantityKinds[kind].dimension, { significantDigits: 3 });
  });
  return us === metric ? `${us}` : `${us} (${metric})`;
}

/** The greatest value that agrees with the other facts. */
export function atMost(value: number, kind: QuantityKind): string {
  return `at most ${amount(value, kind)}`;
}

/** The least value that agrees with the other facts. */
export function atLeast(value: number, kind: QuantityKind): string {
  return `at least ${amount(value, kind)}`;
}
