import type { SetUpPrediction } from '@standstill/workshop';
import { rowWords } from '../../shared/picture/row-words.ts';
import type { Units } from '../../shared/units/unit-choice.tsx';

type Measures = Pick<Units, 'distance' | 'temperature' | 'share' | 'force'>;

/** What one cold stop does not say: heat over the stops in a row, and how much of the pedal is left. */
export function complaintWords(setUp: SetUpPrediction, pedalForce_N: number, units: Measures): string {
  return `${heatWords(setUp, units)} ${pedalWords(setUp, pedalForce_N, units)}`.replace(
    / (?=[%°])/g,
    '\u00a0',
  );
}

function heatWords({ repeatedStops }: SetUpPrediction, { distance, temperature }: Measures): string {
  const last = repeatedStops.at(-1);
  if (!last || repeatedStops.length < 2)
    return 'Heat: only one stop is asked about, so that fade does not show.';
  const [front, rear] = (['frontRotorPeak_C', 'rearRotorPeak_C'] as const).map((key) =>
    temperature.text(Math.max(...repeatedStops.map((stop) => stop[key]))),
  );
  return `Heat: over ${repeatedStops.length} stops in a row the front rotors reach ${front}, the rear ones ${rear}; ${rowWords(repeatedStops, distance.text)}`;
}

function pedalWords(setUp: SetUpPrediction, pedalForce_N: number, { share, force }: Measures): string {
  const { pedalTravelShare: used, pedalBottoms, pedalForceThere_N, atTiresLimit } = setUp;
  if (pedalBottoms) return `Pedal: it reaches the floor at about ${force.text(pedalForceThere_N)}.`;
  const asked = `at ${force.exact(pedalForce_N)} it takes ${share.text(used)} of its travel (${share.range(used)})`;
  if (!atTiresLimit) return `Pedal: ${asked}.`;
  const { pedalForce_N: limit, pedalTravelShare } = atTiresLimit;
  return `Pedal: ${asked}; at the tires’ limit, ${force.text(limit)}, it takes ${share.text(pedalTravelShare)}.`;
}
