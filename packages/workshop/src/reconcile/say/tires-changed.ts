import type { Explained } from '../explained.ts';

/**
 * Whether the tires are known to be others after than before: by the set-ups, or by what is said of the runs.
 *
 * @param about - what the sentences are about
 * @returns true where either says so
 */
export function tiresChanged({ after, brakesAlone, confounders }: Explained): boolean {
  return brakesAlone !== after || confounders.some((text) => /^tires\b/i.test(text));
}
