import type { KnownFacts } from '../job/job.ts';
import type { Draw } from './draw.ts';

/** A table of known facts as plain numbers. */
export function settleFacts<F extends object>(
  facts: KnownFacts<F>,
  draw: Draw,
): { readonly [K in keyof F]: number } {
  const settled: Partial<Record<keyof F, number>> = {};
  for (const key of Object.keys(facts) as (keyof F)[]) settled[key] = draw(facts[key]);
  return settled as { readonly [K in keyof F]: number };
}
