import type { QuantityKind } from '@standstill/units';
import type { Estimate, Speaker } from '@standstill/workshop';

/** `163 ft (160 to 166 ft)`; without an interval only the value, to three digits. */
export function estimateWords(estimate: Estimate, kind: QuantityKind, say: Speaker): string {
  if (!(estimate.high > estimate.low)) return say.plain(estimate.value, kind);
  return `${say.central(estimate, kind)} (${say.range(estimate.low, estimate.high, kind)})`;
}

/** A value with its standard error as an estimate: 95 %, 1.96 standard errors either way. */
export function withStandardError(value: number, standardError: number): Estimate {
  const half = 1.96 * standardError;
  return { value, low: value - half, high: value + half };
}
