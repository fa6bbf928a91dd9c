import type { SetFigures } from './stop-set.ts';

/** Share of what a stop can be measured to, under which stops are too alike to tell how they scatter. Common practice. */
const tooAlike = 1 / 20;

/**
 * What the measuring leaves open in the mean of stops that came out all but the same, as coarse or made logs do: their
 * scatter tells nothing, so that their single stops' errors have to.
 *
 * Equation: σ = m/√n where s < m/20, else 0
 * Assumes: stops that scatter more than that show the errors of their measuring in their scatter.
 *
 * @param set - n distances, their standard deviation s and their measuring error m, m
 * @returns standard error, m
 * Source: [common-practice]
 */
export function hiddenError({
  distances,
  standardDeviation,
  measuringError,
}: Pick<SetFigures, 'distances' | 'standardDeviation' | 'measuringError'>): number {
  return standardDeviation < measuringError * tooAlike ? measuringError / Math.sqrt(distances.length) : 0;
}
