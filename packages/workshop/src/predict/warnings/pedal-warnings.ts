import type { PedalTravel } from '@standstill/braking';
import type { Warning } from '../../results/warning.ts';

interface PedalWarningsInput {
  readonly id: string;
  readonly title: string;
  readonly travel: PedalTravel;
  readonly boosterRunOut: boolean;
  /** 1, share of the pedal's travel used, upper end of its interval. */
  readonly shareHigh: number;
}

/** Share of the pedal travel that should stay free when the brakes are applied hard (common practice). */
const mostShare = 0.75;

/** What the pedal has to say before anybody drives. */
export function pedalWarnings(input: PedalWarningsInput): Warning[] {
  const { id, title, travel, boosterRunOut, shareHigh } = input;
  const warnings: Warning[] = [];
  if (travel.bottomed) {
    const message = `${title}: the pedal or the master cylinder bottoms before this pressure is reached; the real stop is longer than shown. Do not drive it like this.`;
    warnings.push({ code: 'pedal-bottoms', severity: 'danger', about: id, message });
  } else if (shareHigh > mostShare) {
    const message = `${title}: the pedal may use ${Math.round(100 * shareHigh)} % of its travel; common practice keeps a quarter free. Check the stroke with one circuit lost.`;
    warnings.push({ code: 'pedal-long', severity: 'caution', about: id, message });
  }
  if (boosterRunOut) {
    const message = `${title}: at this pedal force the booster has given all it has; more pressure takes the full extra effort of the leg.`;
    warnings.push({ code: 'booster-run-out', severity: 'note', about: id, message });
  }
  if (travel.hoseBeyondTable) {
    const message = `${title}: the line pressure is above the last pressure at which the hose growth is stated; the pedal travel there is carried on in a straight line.`;
    warnings.push({ code: 'hose-beyond-table', severity: 'note', about: id, message });
  }
  return warnings;
}
