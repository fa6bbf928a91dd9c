import type { QuantityInput } from '../document/quantity-input.ts';
import type { Facts } from '../facts/fact.ts';
import type { KnownFacts } from '../job.ts';
import type { Known } from '../known.ts';
import type { DocumentPath } from '../reading/position.ts';
import type { Fallback, Filler } from './filler.ts';

/** What stands in for a fact, from the other facts where it needs them; `needed` where nothing can. */
type FallbackFor<F extends Facts> = 'needed' | ((known: (key: keyof F) => Known) => Fallback);

export type Fallbacks<F extends Facts> = {
  readonly [K in keyof F as F[K] extends { readonly required: true } ? never : K]: FallbackFor<F>;
};

interface FillFactsInput<F extends Facts> {
  readonly facts: F;
  readonly stated: { readonly [K in keyof F]?: QuantityInput | undefined };
  readonly path: DocumentPath;
  readonly fallbacks: Fallbacks<F>;
}

/** Makes every fact of a table known: stated, or filled in and listed. */
export function fillFacts<F extends Facts>(filler: Filler, input: FillFactsInput<F>): KnownFacts<F> {
  const known: Partial<Record<keyof F, Known>> = {};
  const fallbacks = new Map<string, FallbackFor<F>>(Object.entries(input.fallbacks));
  const knownOf = (key: keyof F): Known => (known[key] ??= fill(key));
  const fill = (key: keyof F): Known => {
    const fact = input.facts[key];
    if (fact === undefined) throw new TypeError(`no fact ${String(key)}`);
    const path = [...input.path, String(key)];
    const stated = input.stated[key];
    if (stated !== undefined) return filler.stated(fact, stated, path);
    const fallback = fallbacks.get(String(key)) ?? 'needed';
    return fallback === 'needed' ? filler.missing(fact, path) : filler.assumed(fact, path, fallback(knownOf));
  };
  for (const key of Object.keys(input.facts)) knownOf(key);
  return known as KnownFacts<F>;
}
