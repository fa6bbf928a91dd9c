import type { RepeatedStop } from '@standstill/braking';
import type { Warning } from '../../results/warning.ts';
import { percent } from '../../words/percent.ts';
import type { DrawTroubles, FigureDraws } from '../sample-set-ups.ts';
import { shareOf } from '../share-of.ts';

interface DrawWarningsInput {
  readonly id: string;
  readonly title: string;
  readonly troubles: DrawTroubles;
  readonly draws: FigureDraws;
  readonly row: readonly RepeatedStop[];
  /** How many repeated stops were asked for. */
  readonly asked: number;
}

/** Share of the draws from which a car that does not stop is a danger (assumed). */
const danger = 0.05;

/** Where a set-up gives no distance: centrally in the row of repeated stops, or in some of the draws. */
export function drawWarnings({ id, title, troubles, draws, row, asked }: DrawWarningsInput): Warning[] {
  const { noRest, outOfRange, refusal } = troubles;
  const count = draws.distance.length;
  const warnings = rowWarnings(id, title, draws, row);
  warnings.push(...tooHot(id, title, row, asked));
  if (noRest > 0) {
    const severity = noRest >= danger * count ? 'danger' : 'caution';
    const message = `${title}: in ${noRest} of ${count} draws the car does not come to rest with this foot on this road; the intervals hold without them and are too short. Ask for more pedal force or less grade.`;
    warnings.push({ code: 'car-may-not-stop', severity, about: id, message });
  }
  if (outOfRange > 0) {
    const severity = outOfRange > 0.02 * count ? 'caution' : 'note';
    const message = `${title}: ${outOfRange} of ${count} draws fell outside what the formulas are valid for (${refusal ?? ''}) and were left out of all intervals. State that value with a smaller spread, or measure it.`;
    warnings.push({ code: 'draws-left-out', severity, about: id, message });
  }
  return warnings;
}

function rowWarnings(id: string, title: string, draws: FigureDraws, row: readonly RepeatedStop[]): Warning[] {
  const last = row.at(-1);
  if (last !== undefined && !last.stop.cameToRest) {
    const message = `${title}: the brakes fade until the car no longer comes to rest, in stop ${last.number} of the repeated stops. Do not drive it like this.`;
    return [{ code: 'car-does-not-stop', severity: 'danger', about: id, message }];
  }
  const failing = 1 - shareOf(draws.rowStops, 1);
  if (failing <= 0) return [];
  const severity = failing >= danger ? 'danger' : 'caution';
  const message = `${title}: in ${percent(failing)} of the draws the car no longer comes to rest in one of the repeated stops.`;
  return [{ code: 'car-may-not-stop', severity, about: id, message }];
}

function tooHot(id: string, title: string, row: readonly RepeatedStop[], asked: number): Warning[] {
  const isCut = row.length < asked && row.at(-1)?.stop.cameToRest !== false;
  if (!isCut) return [];
  const message = `${title}: from stop ${row.length + 1} of ${asked} on the rotors get hotter than anything that can be computed (1500 K over the air); the row ends before. Do not drive it like this.`;
  return [{ code: 'rotor-beyond-computing', severity: 'danger', about: id, message }];
}
