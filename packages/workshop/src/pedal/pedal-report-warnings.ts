import { driverLimits } from '@standstill/braking';
import type { SetUp } from '@standstill/braking';
import type { UnitSystem } from '@standstill/units';
import type { PedalReport } from '../results/pedal-report.ts';
import type { Warning } from '../results/warning.ts';
import { percent } from '../words/percent.ts';
import { speaker } from '../words/speaker.ts';
import { goodBleed } from './measured/measured-verdict.ts';

/** Share of the draws from which a pedal at its end is a danger (assumed). */
const dangerShare = 0.05;
/** Share of the draws from which an empty reservoir is worth a word: its size is mostly assumed (assumed). */
const likelyEmpty = 0.3;
/** m³ of air that makes the pedal noticeably longer (assumed). */
const noticeableAir = 1e-6;
/** Share of the pedal's travel that should stay free (common practice: a quarter). */
const mostShare = 0.75;

type Told = Omit<PedalReport, 'sentence' | 'warnings' | 'assumed'>;

/** What is there, as far as the model ends at it. */
export interface PedalKinds {
  readonly booster: SetUp['booster']['kind'];
  readonly masterCylinder: SetUp['masterCylinder']['kind'];
  /** True where a hose is past its last stated pressure. */
  readonly hoseBeyondTable: boolean;
}

/** What the pedal has to say before anybody drives, dangers first. */
export function pedalReportWarnings(report: Told, kinds: PedalKinds, units: UnitSystem): Warning[] {
  const about = report.setUp;
  return [
    ...ofPush(report),
    ...report.circuitsLost.flatMap((lost) => ofCircuit(lost)),
    ...ofAssist(report, units),
    ...ofKnockBack(report),
    ...ofReservoir(report),
    ...ofMeasured(report, units),
    ...ofModel(report, kinds),
  ]
    .map((warning) => ({ ...warning, about }))
    .toSorted((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
}

const severities = ['danger', 'caution', 'note'] as const;

function ofPush({ push }: Told): Warning[] {
  if (push.bottoms) {
    const message =
      'The pedal or the master cylinder is at its end before the pressure of this push is there. Do not drive it like this.';
    return [{ code: 'pedal-bottoms', severity: 'danger', message }];
  }
  if (push.bottomsShare > 0) {
    const severity = push.bottomsShare >= dangerShare ? 'danger' : 'caution';
    const message = `In ${percent(push.bottomsShare)} of the draws the pedal is at its end before the pressure of this push is there. Bleed it and measure travel against force before anybody drives.`;
    return [{ code: 'pedal-may-bottom', severity, message }];
  }
  if (push.travelShare.high <= mostShare) return [];
  const message = `The pedal may use ${percent(push.travelShare.high)} of its travel; common practice keeps a quarter free.`;
  return [{ code: 'pedal-long', severity: 'caution', message }];
}

function ofCircuit(lost: Told['circuitsLost'][number]): Warning[] {
  const { title, bottoms, bottomsShare, fallsShort, fallsShortShare, strokesAssumed } = lost;
  const name = title.charAt(0).toLowerCase() + title.slice(1);
  const assumed = strokesAssumed
    ? ' (single strokes taken as half of the full stroke each: measure or look them up)'
    : '';
  if (bottoms || bottomsShare > 0) {
    const often = bottoms ? '' : ` in ${percent(bottomsShare)} of the draws`;
    const severity = bottoms || bottomsShare >= dangerShare ? 'danger' : 'caution';
    const message = `With ${name} lost the pedal or the live chamber is at its end${often} before the pressure for the reference deceleration is there${assumed}.`;
    return [{ code: 'circuit-lost-bottoms', severity, message }];
  }
  if (fallsShort || fallsShortShare >= dangerShare) {
    const often = fallsShort ? '' : ` in ${percent(fallsShortShare)} of the draws`;
    const message = `With ${name} lost a push of 500 N does not reach the reference deceleration${often}${assumed}.`;
    return [{ code: 'circuit-lost-short', severity: 'caution', message }];
  }
  return [];
}

function ofAssist({ assistLost, pushesWithoutEngine: pushes }: Told, units: UnitSystem): Warning[] {
  const warnings: Warning[] = [];
  if (assistLost !== null && (assistLost.fallsShort || assistLost.fallsShortShare >= dangerShare)) {
    const often = assistLost.fallsShort ? '' : ` in ${percent(assistLost.fallsShortShare)} of the draws`;
    const message = `Without assist a push of 500 N does not reach the reference deceleration${often}.`;
    warnings.push({ code: 'assist-lost-short', severity: 'caution', message });
  }
  const needed = assistLost?.pedalForceAtReference_N?.value ?? 0;
  const { weakDriverForce, lawfulForce } = driverLimits;
  if (needed > weakDriverForce.low && needed <= lawfulForce.high) {
    const say = speaker(units);
    const weak = say.range(weakDriverForce.low, weakDriverForce.high, 'force');
    const message = `Without assist the reference deceleration takes ${say.rounded(needed, 'force', 2)}; a weak driver gives ${weak}.`;
    warnings.push({ code: 'assist-lost-heavy', severity: 'note', message });
  }
  const gone =
    pushes?.findIndex(({ vacuum_Pa }) => vacuum_Pa.value < 0.3 * (pushes[0]?.vacuum_Pa.value ?? NaN)) ?? -1;
  if (pushes !== null && gone > 0) {
    const left = speaker(units).rounded(pushes[gone]?.vacuum_Pa.value ?? 0, 'vacuum', 2);
    const message = `With the engine off, ${gone} ${gone === 1 ? 'push of this force leaves' : 'pushes of this force leave'} ${left} of vacuum: less than a third of what there was.`;
    warnings.push({ code: 'vacuum-runs-down', severity: 'note', message });
  }
  return warnings;
}

function ofKnockBack({ knockBackShare, push }: Told): Warning[] {
  if (push.bottoms || knockBackShare.high <= mostShare || push.travelShare.high > mostShare) return [];
  const message = `The first push after a bend may use ${percent(knockBackShare.high)} of the travel: run-out, bearing play and axle float knock the pads back.`;
  return [{ code: 'knock-back-long', severity: 'caution', message }];
}

function ofReservoir({ wornPads }: Told): Warning[] {
  if (wornPads.emptyShare < likelyEmpty) return [];
  const message = `From these pads to worn ones the calipers take more fluid than the reservoir has between its marks (in ${percent(wornPads.emptyShare)} of the draws): check the level as the pads wear, and never fill it up on worn pads without a thought of new ones.`;
  return [{ code: 'reservoir-small', severity: 'caution', message }];
}

function ofMeasured({ measured }: Told, units: UnitSystem): Warning[] {
  if (measured === null) return [];
  const warnings: Warning[] = [];
  if (measured.airTold && measured.air_m3.low > goodBleed) {
    const range = speaker(units).range(measured.air_m3.low, measured.air_m3.high, 'fluid-volume');
    const message = `There is ${range} of trapped air in this system. Find where it comes in and bleed it before anybody drives.`;
    warnings.push({ code: 'air-in-system', severity: 'danger', message });
  }
  const { value: stated } = measured.expectedAir_m3;
  if (measured.airTold && Math.abs(measured.air_m3.value - stated) > noticeableAir) {
    const told = speaker(units).rounded(stated, 'fluid-volume', 2);
    const message = `All but the measured figures are for the ${told} of air in the job: state the measured air as trappedAir of the fluid to see what it does to travel and to a lost circuit.`;
    warnings.push({ code: 'measured-air-not-in-job', severity: 'note', message });
  }
  if (measured.scatter > 2) {
    const message = `The measured points scatter ${measured.scatter.toFixed(1)} times as much as their spreads allow: measure again, or one compliance in a straight line does not describe this pedal. The intervals are widened by it.`;
    warnings.push({ code: 'pedal-points-scatter', severity: 'caution', message });
  }
  if (measured.offset_m.high < 0) {
    const message =
      'The points fit only with less than no free play: the zero of the travel may be off, or air was pressed into solution. Take the air as an upper bound, and measure again from a pedal at rest.';
    warnings.push({ code: 'pedal-offset-below-zero', severity: 'caution', message });
  }
  if (measured.points.some(({ used }) => !used)) {
    const message =
      'Measured points below the push-out pressure of the calipers, or at the floor, were left out of the fit.';
    warnings.push({ code: 'pedal-points-left-out', severity: 'note', message });
  }
  warnings.push({ code: 'cannot-be-told-apart', severity: 'note', message: measured.cannotTell });
  return warnings;
}

function ofModel({ drawsLeftOut, draws }: Told, kinds: PedalKinds): Warning[] {
  const warnings: Warning[] = [];
  if (drawsLeftOut > 0) {
    const severity = drawsLeftOut > 0.02 * draws ? 'caution' : 'note';
    const message = `${drawsLeftOut} of ${draws} draws fell outside what the formulas are valid for and were left out of all intervals.`;
    warnings.push({ code: 'draws-left-out', severity, message });
  }
  if (kinds.booster === 'hydraulic') {
    const message =
      'How many pushes a hydraulic booster has left with the engine off is not modeled: go by the maker, and try it at rest.';
    warnings.push({ code: 'hydraulic-reserve-not-modeled', severity: 'note', message });
  }
  if (kinds.masterCylinder === 'balance-bar') {
    const message =
      'The balance bar is taken to swing until the cylinder of the lost circuit is down; a stop of its own comes sooner and leaves more travel, a bar that jams less.';
    warnings.push({ code: 'balance-bar-swing', severity: 'note', message });
  }
  if (kinds.hoseBeyondTable) {
    const message =
      'The line pressure is above the last pressure at which the hose growth is stated; it is carried on in a straight line.';
    warnings.push({ code: 'hose-beyond-table', severity: 'note', message });
  }
  return warnings;
}
