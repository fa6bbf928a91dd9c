import type { Estimate, StopResult } from '@standstill/workshop';
import type { Measure } from '../../../shared/units/measure.ts';
import { useUnits } from '../../../shared/units/unit-choice.tsx';

/** The distances of one stop in words, each with its 95 % interval. */
export interface StopWords {
  readonly driven: string;
  readonly atNominal: string;
  readonly gate: string;
}

/** A standard error to either end of a 95 % interval. */
const reach = 1.96;

export function useStopPrinter(stop: StopResult): StopWords {
  return stopWords(stop, useUnits().distance);
}

export function stopWords(stop: StopResult, distance: Measure): StopWords {
  const print = (meters: number) => withInterval(meters, stop.distanceStandardError_m, distance);
  const { correctedDistance_m: corrected, gateDistance_m: gate } = stop;
  return {
    driven: print(stop.applicationDistance_m),
    // A stop from far off the nominal speed is not talked up or down to it.
    atNominal: isFarOff(stop) ? 'speed too far off' : corrected === null ? '–' : print(corrected),
    gate: gate === null ? 'gate not crossed' : print(gate),
  };
}

export function isFarOff({ flags }: StopResult): boolean {
  return flags.some(({ code, severity }) => code === 'speed-off-nominal' && severity === 'excludes');
}

/** '163 (161 to 165) ft': no digit that the interval does not support. */
function withInterval(value: number, standardError: number, distance: Measure): string {
  const halfWidth = reach * standardError;
  if (!(halfWidth > 0)) return distance.text(value);
  const estimate: Estimate = { value, low: value - halfWidth, high: value + halfWidth };
  const unit = ` ${distance.symbol}`;
  const central = distance.text(estimate).replace(unit, '');
  return `${central} (${distance.range(estimate).replace(unit, '')})${unit}`;
}
