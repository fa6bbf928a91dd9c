import type { QuantityKind } from '@standstill/units';

/** Something that the person left out or marked assumed, and what stands in its place. */
export interface Filling {
  /** Path in the job document where it would be stated. */
  readonly path: string;
  readonly title: string;
  /** SI with its spread, or words where it is not a number. */
  readonly value: { readonly kind: QuantityKind; readonly number: number; readonly spread: number } | string;
  /** Where it comes from. */
  readonly reason: string;
}
