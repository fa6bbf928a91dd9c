import { annexFiveVerdict, parkingLimits } from '@standstill/braking';
import type { AnnexFiveVerdict, PadTemperatures } from '@standstill/braking';
import { loadLooks, setUpIn } from '../predict/load-looks.ts';
import type { LoadState } from '../predict/load-state.ts';
import { coldPads, rearFirstRange, startPads } from '../predict/lock-looks.ts';
import { shareOf } from '../predict/share-of.ts';
import type { BalanceState } from '../results/balance-report.ts';
import type { Settled } from '../settle/settle.ts';
import { estimateOf, flagShare, knownEstimate } from './balance-draws.ts';
import type { StateDraws } from './balance-draws.ts';
import type { StateFigures } from './balance-figures.ts';
import { curvesResult } from './curves-result.ts';
import { pullDeceleration, stateFigures } from './state-figures.ts';

interface StateResultInput {
  /** With the central values. */
  readonly settled: Settled;
  readonly state: LoadState;
  /** °C; null where no repeated stop is driven. */
  readonly hotPads: PadTemperatures | null;
  readonly draws: StateDraws;
}

/** Everything about one state of load, with its intervals. */
export function stateResult({ settled, state, hotPads, draws }: StateResultInput): BalanceState {
  const { figures, order, curve } = stateFigures(settled, state, hotPads);
  const same = draws
    .of('first')
    .map((first) => (Number.isNaN(first) ? NaN : Number(first === figures.first)));
  return {
    state,
    mass_kg: knownEstimate(figures, draws, 'mass'),
    frontLoadShare: knownEstimate(figures, draws, 'frontLoadShare'),
    centerOfGravityHeight_m: knownEstimate(figures, draws, 'height'),
    firstToLock: order.first,
    firstToLockShare: shareOf(same, 1),
    lockDeceleration_g: estimateOf(figures, draws, 'firstLock'),
    frontLock_g: estimateOf(figures, draws, 'frontLock'),
    rearLock_g: estimateOf(figures, draws, 'rearLock'),
    frontForceShare: knownEstimate(figures, draws, 'frontForceShare'),
    efficiencyAtLock: estimateOf(figures, draws, 'efficiency'),
    rearFirst: {
      share: flagShare(figures, draws, 'rearFirst'),
      shareHot: hotPads === null ? null : flagShare(figures, draws, 'rearFirstHot'),
      central: centralRearFirst(settled, state, hotPads),
    },
    annexFive: annexFiveResult(settled, state, figures, draws),
    pull: pullResult(figures, draws),
    parking: parkingResult(settled, figures, draws),
    curves: curvesResult(setUpIn(settled, state).car, curve, draws),
  };
}

/** The pads that a rear-first lock takes with the central values: warm before cold before hot. */
function centralRearFirst(
  settled: Settled,
  state: LoadState,
  hotPads: PadTemperatures | null,
): BalanceState['rearFirst']['central'] {
  const moments = [
    ['warm', startPads(settled)],
    ['cold', coldPads(settled)],
    ['hot', hotPads],
  ] as const;
  for (const [pads, temperatures] of moments) {
    const found = temperatures === null ? null : rearFirstRange(settled, temperatures, [state]);
    if (found === null) continue;
    const { lowest, highest, byDriveAlone } = found;
    return { pads, lowest_g: lowest, highest_g: highest, byDriveAlone };
  }
  return null;
}

function annexFiveResult(
  settled: Settled,
  state: LoadState,
  figures: StateFigures,
  draws: StateDraws,
): BalanceState['annexFive'] {
  const verdicts = loadLooks(settled, [state]).map(({ setUp, driven }) =>
    annexFiveVerdict({ setUp, driven, padTemperatures: startPads(settled) }),
  );
  const from = (point: (verdict: AnnexFiveVerdict) => { readonly deceleration: number } | undefined) => {
    const found = verdicts.map((verdict) => point(verdict)?.deceleration ?? Infinity);
    const first = Math.min(...found);
    return Number.isFinite(first) ? first : null;
  };
  const rule = (
    name: 'rearBelowFront' | 'adhesionWithin' | 'rearUnderTorqueWheel',
    brokenFrom_g: number | null,
  ) => ({ kept: figures[name] === 1, brokenFrom_g, keptShare: flagShare(figures, draws, name) });
  return {
    rearBelowFront: rule(
      'rearBelowFront',
      from(({ rearAboveFrontAt }) => rearAboveFrontAt),
    ),
    adhesionWithinLimit: rule(
      'adhesionWithin',
      from(({ overLimitAt }) => overLimitAt),
    ),
    rearUnderTorqueWheelLine: rule(
      'rearUnderTorqueWheel',
      from(({ rearOverTorqueWheelLineAt }) => rearOverTorqueWheelLineAt),
    ),
    examinedTo_g: Math.min(...verdicts.map(({ examinedTo }) => examinedTo)),
    yardstickOnly: settled.setUp.antilock.kind !== 'none',
  };
}

function pullResult(figures: StateFigures, draws: StateDraws): BalanceState['pull'] {
  const yawMoment = estimateOf(figures, draws, 'yawMoment');
  const left = estimateOf(figures, draws, 'pulledDeceleration');
  if (yawMoment === null || left === null) return null;
  return { asked_g: pullDeceleration, yawMoment_Nm: yawMoment, left_g: left };
}

function parkingResult(
  { parking }: Settled,
  figures: StateFigures,
  draws: StateDraws,
): BalanceState['parking'] {
  const [gradeByBrake, gradeByTires, gradeHeld] = [
    estimateOf(figures, draws, 'gradeByBrake'),
    estimateOf(figures, draws, 'gradeByTires'),
    estimateOf(figures, draws, 'gradeHeld'),
  ];
  if (parking === null || gradeByBrake === null || gradeByTires === null || gradeHeld === null) return null;
  const holds = draws
    .of('gradeHeld')
    .map((grade) => (Number.isNaN(grade) ? NaN : Number(grade >= parkingLimits.grade)));
  return {
    operatedBy: parking.operatedBy,
    force_N: parking.force,
    gradeByBrake,
    gradeByTires,
    gradeHeld,
    holdsTwentyPercent: gradeHeld.value >= parkingLimits.grade,
    holdsShare: shareOf(holds, gradeHeld.value >= parkingLimits.grade ? 1 : 0),
  };
}
