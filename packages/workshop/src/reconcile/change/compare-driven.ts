import { compareStopSets } from '@standstill/logs';
import type { StopSet, StopSetComparison } from '@standstill/logs';
import { foundStopOf } from '../../proof/found-stop-of.ts';
import { sameLogger } from '../../proof/same-logger.ts';
import type { DrivenSetUp } from '../explain-stops-input.ts';
import type { MeasuredStops } from '../measured/measured-stops.ts';

export interface CompareDrivenInput {
  readonly driven: readonly [before: DrivenSetUp, after: DrivenSetUp];
  readonly stops: readonly [before: MeasuredStops, after: MeasuredStops];
  readonly speed: number;
  readonly seed: number;
}

/** The measured change of the distance, as `compareStopSets` finds it; what counts was decided before. */
export function compareDriven({ driven, stops, speed, seed }: CompareDrivenInput): StopSetComparison | null {
  const [before, after] = driven;
  const compared = compareStopSets({
    before: setOf(before.setUp, stops[0]),
    after: setOf(after.setUp, stops[1]),
    nominalSpeed: speed,
    definition: 'application',
    sameLogger: sameLogger(before.reports, after.reports),
    seed,
  });
  return compared.ok ? compared : null;
}

function setOf(name: string, { stops, rows }: MeasuredStops): StopSet {
  return {
    name,
    stops: stops.map((stop, index) => ({
      ...foundStopOf(stop),
      flags: [],
      correctedDistance: rows[index]![0]!,
    })),
  };
}
