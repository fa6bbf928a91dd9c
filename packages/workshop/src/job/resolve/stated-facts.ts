import type { QuantityInput } from '../document/quantity-input.ts';
import type { Facts } from '../facts/fact.ts';
import type { StatedFacts } from '../job.ts';
import type { DocumentPath } from '../reading/position.ts';
import type { Filler } from './filler.ts';

interface StatedFactsInput<F extends Facts> {
  readonly facts: F;
  readonly stated: { readonly [K in keyof F]?: QuantityInput | undefined };
  readonly path: DocumentPath;
}

/** Makes known what a person states of a table of facts; null for the rest, which nothing stands in for. */
export function statedFacts<F extends Facts>(filler: Filler, input: StatedFactsInput<F>): StatedFacts<F> {
  const entries = Object.entries(input.facts).map(([key, fact]) => {
    const stated = input.stated[key];
    return [key, stated === undefined ? null : filler.stated(fact, stated, [...input.path, key])] as const;
  });
  return Object.fromEntries(entries) as StatedFacts<F>;
}
