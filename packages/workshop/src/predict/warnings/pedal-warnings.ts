import type { UnitSystem } from '@standstill/units';
import type { Warning } from '../../results/warning.ts';
import type { SetUpPrediction } from '../../results/prediction.ts';
import { percent } from '../../words/percent.ts';
import { lightestFoot } from '../foot-there.ts';
import { speaker } from '../../words/speaker.ts';
import type { Speaker } from '../../words/speaker.ts';

interface PedalWarningsInput {
  readonly prediction: SetUpPrediction;
  /** True where a hose is past its last stated pressure. */
  readonly hoseBeyondTable: boolean;
  /** N, as asked. */
  readonly pedalForce: number;
  readonly units: UnitSystem;
}

/** Share of the pedal travel that should stay free when the brakes are applied hard (common practice). */
const mostShare = 0.75;
/** Share of the draws from which a pedal on the floor is a danger (assumed). */
export const bottomsDanger = 0.05;

/** What the pedal has to say before anybody drives. */
export function pedalWarnings(input: PedalWarningsInput): Warning[] {
  const { prediction, hoseBeyondTable, pedalForce, units } = input;
  const { id, title, boosterRunOut } = prediction;
  const say = speaker(units);
  const warnings = [...floor(prediction, pedalForce, say), ...limitBeyond(prediction, say)];
  if (boosterRunOut) {
    const message = `${title}: at this pedal force the booster has given all it has; more pressure takes the full extra effort of the leg.`;
    warnings.push({ code: 'booster-run-out', severity: 'note', about: id, message });
  }
  if (hoseBeyondTable) {
    const message = `${title}: the line pressure is above the last pressure at which the hose growth is stated; the pedal travel there is carried on in a straight line.`;
    warnings.push({ code: 'hose-beyond-table', severity: 'note', about: id, message });
  }
  return warnings;
}

/** `about 45 lbf`, or that there is hardly any. */
export function forceThereWords(force: number, say: Speaker): string {
  return force <= lightestFoot ? 'the first touch' : `about ${say.rounded(force, 'force', 2)}`;
}

function floor(prediction: SetUpPrediction, pedalForce: number, say: Speaker): Warning[] {
  const { id, title, pedalBottoms, pedalBottomsShare, pedalForceThere_N, pedalTravelShare } = prediction;
  const asked = say.plain(pedalForce, 'force');
  const there = forceThereWords(pedalForceThere_N, say);
  if (pedalBottoms) {
    const message = `${title}: the pedal or the master cylinder reaches the floor at ${there}, before the pressure of ${asked}: a distance at ${asked} would need travel that is not there. What is shown is for what the travel gives. Do not drive it like this.`;
    return [{ code: 'pedal-bottoms', severity: 'danger', about: id, message }];
  }
  if (pedalBottomsShare > 0) {
    const severity = pedalBottomsShare >= bottomsDanger ? 'danger' : 'caution';
    const message = `${title}: in ${percent(pedalBottomsShare)} of the draws the pedal reaches the floor before the pressure of this foot is there. Bleed it and measure travel against force before anybody drives.`;
    return [{ code: 'pedal-may-bottom', severity, about: id, message }];
  }
  const high = (prediction.atTiresLimit?.pedalTravelShare ?? pedalTravelShare).high;
  const beyond = pedalForceThere_N < pedalForce;
  if (beyond) {
    const message = `${title}: a foot that goes on past the tires' limit finds the floor at ${there}. Check the stroke with one circuit lost.`;
    return [{ code: 'pedal-long', severity: 'caution', about: id, message }];
  }
  if (high <= mostShare) return [];
  const at = prediction.atTiresLimit === null ? '' : " already at the tires' limit";
  const message = `${title}: the pedal may use ${percent(high)} of its travel${at}; common practice keeps a quarter free. Check the stroke with one circuit lost.`;
  return [{ code: 'pedal-long', severity: 'caution', about: id, message }];
}

function limitBeyond({ id, title, limitBeyondFootShare }: SetUpPrediction, say: Speaker): Warning[] {
  if (!(limitBeyondFootShare > 0 && limitBeyondFootShare < 1)) return [];
  const message = `${title}: in ${percent(limitBeyondFootShare)} of the draws the tires' limit takes more than ${say.plain(1000, 'force')} on the pedal, the strongest foot looked at; there the interval of that force ends at the cap.`;
  return [{ code: 'limit-beyond-foot', severity: 'note', about: id, message }];
}
