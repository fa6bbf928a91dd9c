import { splitCompliance, splitParts, splitTravels } from '@standstill/braking';
import type { PluggedReading, SetUp, SplitCompliance, SplitPart } from '@standstill/braking';
import type { MeasuredPedal } from '../../results/pedal-report.ts';
import type { GaugeSpread } from './fit-draws.ts';
import { partTitles } from './part-titles.ts';
import type { UsablePoint } from './usable-points.ts';

/** m³: how much air is thought possible at one axle before anything is measured; the fault that is looked for (assumed). */
const airSpread = 5e-6;
/** Width after over width before up to which the points are said to tell a part (assumed). */
const mostNarrowing = 0.6;
/** m; a part that takes less is not worth telling. */
const leastTravel = 0.002;

export interface SplitDrawsInput {
  /** In the state of the test. */
  readonly setUp: SetUp;
  readonly draws: readonly (SetUp | null)[];
  readonly points: readonly UsablePoint[];
  readonly gauge: GaugeSpread;
}

export type Split = Pick<MeasuredPedal, 'split' | 'splitConditionNumber'>;

/**
 * Answers how the measured travel is shared out among the parts, by the spreads of the job and by plugged corners.
 *
 * @param input - set-up and its draws; measured points; spread of the gauges
 * @returns each part before and after, m at the hardest point, and the condition number
 */
export function splitDraws({ setUp, draws, points, gauge }: SplitDrawsInput): Split {
  const readings = points
    .filter(({ used }) => used)
    .map(({ reading, frontPlugged, rearPlugged }) => ({ ...reading, frontPlugged, rearPlugged }));
  const found: SplitCompliance = splitCompliance({
    setUp,
    readings,
    travelSpread: gauge.travel,
    forceSpread: gauge.force,
    priorSpreads: priorSpreads(setUp, draws, readings),
    airSpread,
  });
  return {
    split: found.parts.map(({ part, prior, priorSpread, posterior, posteriorSpread, narrowing }) => ({
      part,
      title: partTitles[part] ?? part,
      prior_m: around(prior, priorSpread),
      posterior_m: around(posterior, posteriorSpread),
      narrowing,
      told: narrowing <= mostNarrowing && 4 * priorSpread >= leastTravel,
    })),
    splitConditionNumber: Number.isFinite(found.condition) ? found.condition : null,
  };
}

/** Travel can't be less than none. */
function around(value: number, spread: number): MeasuredPedal['split'][number]['prior_m'] {
  const middle = Math.max(0, value);
  return {
    value: middle,
    low: Math.max(0, value - 1.96 * spread),
    high: Math.max(middle, value + 1.96 * spread),
  };
}

/** One standard deviation of what each part takes at the pressures of the hardest reading, as a share of its middle. */
function priorSpreads(
  setUp: SetUp,
  draws: readonly (SetUp | null)[],
  readings: readonly PluggedReading[],
): Record<SplitPart, number> {
  const hardest = readings.reduce((most, one) => (one.pedalForce > most.pedalForce ? one : most));
  const open = { ...hardest, frontPlugged: 0, rearPlugged: 0 };
  const middle = splitTravels(setUp, open);
  const drawn = draws.flatMap((each) => (each === null ? [] : [splitTravels(each, open)]));
  const share = (part: SplitPart): number => {
    if (!(middle[part] > 0) || drawn.length === 0) return 0.3;
    const squares = drawn.reduce((sum, each) => sum + (each[part] / middle[part] - 1) ** 2, 0);
    return Math.sqrt(squares / drawn.length);
  };
  return Object.fromEntries(splitParts.map((part) => [part, share(part)])) as Record<SplitPart, number>;
}
