import { randomStream, type RandomStream } from '@standstill/numerics';
import type { CountedDistances } from '../counted-distances.ts';
import { coverage } from '../coverage.testing.ts';
import type { StopCovariates } from '../stop-set.ts';
import { adjustedDifference } from './adjusted-difference.ts';

export interface CoverageDesign {
  /** Runs before and after. */
  readonly counts: readonly [number, number];
  /** m, before and after. */
  readonly spreads: readonly [number, number];
  /** Whether direction and tire temperature move the distances and are written down. */
  readonly conditions: boolean;
  readonly draws: number;
}

const truth = { change: -3, runOrder: 0.3, firstRun: 0.8, direction: 0.4, tireTemperature: 0.4 };

/** How often the intervals hold a made change, trend, warm-up and two conditions. */
export function adjustedCoverage(design: CoverageDesign): {
  readonly line: string;
  readonly shares: Readonly<Record<'difference' | 'runOrder' | 'firstRun', number>>;
} {
  const { counts, spreads, conditions, draws } = design;
  const stream = randomStream(91, `adjusted/${counts.join('/')}/${spreads.join('/')}/${conditions}`);
  const [difference, runOrder, firstRun] = [coverage(), coverage(), coverage()];
  let separate = 0;
  for (let draw = 0; draw < draws; draw += 1) {
    const [before, after] = [0, truth.change].map((change, set) =>
      made({ count: counts[set]!, spread: spreads[set]!, base: 45 + change, conditions }, stream),
    );
    const { adjusted } = adjustedDifference(before!, after!);
    if (adjusted === null) throw new Error('nothing was taken out');
    difference.add(adjusted.difference, truth.change);
    if (adjusted.slope === 'separate') separate += 1;
    for (const { name, effect } of adjusted.takenOut) {
      if (name === 'run-order') runOrder.add(effect, truth.runOrder);
      if (name === 'first-run') firstRun.add(effect, truth.firstRun);
    }
  }
  const shares = {
    difference: difference.share(),
    runOrder: runOrder.share(),
    firstRun: firstRun.share(),
  };
  const figures = Object.entries(shares).map(([name, share]) => `${name} ${(100 * share).toFixed(1)} %`);
  const by = conditions ? ', direction and tire temperature' : '';
  const line = `adjusted, ${counts.join(' and ')} runs, spreads ${spreads.join(' and ')} m${by}: held ${figures.join(', ')}; two slopes in ${((100 * separate) / draws).toFixed(1)} %`;
  return { line, shares };
}

interface MadeSet {
  readonly count: number;
  readonly spread: number;
  readonly base: number;
  readonly conditions: boolean;
}

function made({ count, spread, base, conditions }: MadeSet, stream: RandomStream): CountedDistances {
  const covariates = Array.from({ length: count }, (_, index): StopCovariates =>
    conditions ? { direction: index % 2 === 0 ? 1 : -1, tireTemperature: 30 + 2 * stream.normal() } : {},
  );
  const distances = covariates.map(({ direction = 0, tireTemperature = 30 }, index) => {
    const moved = (truth.direction / 2) * direction + truth.tireTemperature * (tireTemperature - 30);
    const first = index === 0 ? truth.firstRun : 0;
    return base + truth.runOrder * index + first + moved + spread * stream.normal();
  });
  return {
    distances,
    runs: distances.map((_, index) => index + 1),
    indices: distances.map((_, index) => index),
    covariates,
    standardErrors: distances.map(() => 0),
    sharedErrors: distances.map(() => 0),
    leftOut: [],
    judged: [],
  };
}
