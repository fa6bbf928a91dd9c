import type { Fact } from '../facts/fact.ts';
import type { Origin, QuantityInput } from './quantity-input.ts';

/** A quantity in SI, or what is wrong with it. */
export type QuantityReading =
  | { readonly ok: true; readonly value: number; readonly origin: Origin; readonly spread: number | null }
  | {
      readonly ok: false;
      readonly code: string;
      readonly found: string;
      readonly accepted: string;
      readonly message: string;
    };

export function readQuantity(_input: QuantityInput, _fact: Fact): QuantityReading {
  throw new Error('not written yet');
}
