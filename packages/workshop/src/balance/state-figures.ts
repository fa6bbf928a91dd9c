import {
  adhesionUse,
  annexFiveVerdict,
  brakePull,
  brakingEfficiency,
  installedLine,
  installedPoint,
  liftOffDeceleration,
  parkingHold,
  parkingTorque,
  standardGravity,
} from '@standstill/braking';
import type { BalancePoint, LockOrder, PadTemperatures } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import { loadLooks } from '../predict/load-looks.ts';
import type { LoadLook } from '../predict/load-looks.ts';
import type { LoadState } from '../predict/load-state.ts';
import { coldPads, rearFirstWith, startPads, worseLockOrder } from '../predict/lock-looks.ts';
import type { Settled } from '../settle/settle.ts';
import { curveDecelerations } from './balance-figures.ts';
import type { StateFigures } from './balance-figures.ts';
import { parkingBrakeOf } from './parking-brake-of.ts';

/** Everything about one state of load in one draw. */
export interface StateAnswer {
  readonly order: LockOrder;
  readonly figures: StateFigures;
  /** The installed curve at `curveDecelerations`; undefined where the foot or the road does not reach. */
  readonly curve: readonly (BalancePoint | undefined)[];
}

/** Deceleration over g at which the pull of a dead brake is looked at: a firm stop in traffic (assumed). */
export const pullDeceleration = 0.5;

const firstCodes = { none: 0, front: 1, rear: 2, both: 3 } as const;

/**
 * Answers the balance of a set-up in one state of load.
 *
 * @param settled - the set-up and its question
 * @param state - as tested or laden
 * @param hotPads - °C, the hottest that the repeated stops make of the pads; null where they are not driven
 * @returns figures and curve
 * @throws OutOfRangeError where the set-up is outside what the formulas are valid for
 */
export function stateFigures(
  settled: Settled,
  state: LoadState,
  hotPads: PadTemperatures | null,
): StateAnswer {
  const looks = loadLooks(settled, [state]);
  const [plain] = looks;
  if (plain === undefined) throw new TypeError('a state has at least one look');
  const order = worseLockOrder(settled, looks);
  const { car } = plain.setUp;
  const isRearFirst =
    order.first === 'rear' ||
    [startPads, coldPads].some((pads) => rearFirstWith(settled, pads(settled), [state]));
  const figures = {
    mass: car.mass,
    frontLoadShare: car.frontLoadShare,
    height: car.centerOfGravityHeight,
    first: firstCodes[order.first],
    firstLock: order.at?.deceleration ?? NaN,
    frontLock: order.front?.deceleration ?? NaN,
    rearLock: order.rear?.deceleration ?? NaN,
    frontForceShare: (order.at ?? order.atStrongestFoot).frontForceShare,
    efficiency: efficiencyAtLock(plain, order),
    rearFirst: isRearFirst ? 1 : 0,
    rearFirstHot: hotPads === null ? NaN : Number(rearFirstWith(settled, hotPads, [state])),
    ...ruleFigures(settled, looks),
    ...pullFigures(settled, plain),
    ...parkingFigures(settled, plain),
  };
  return { order, figures, curve: curveOf(settled, plain) };
}

/** How well front and rear match when the first axle locks; NaN where nothing locks before the rear wheels lift. */
function efficiencyAtLock({ setUp: { car } }: LoadLook, { at }: LockOrder): number {
  if (at === null || !(at.deceleration > 0)) return NaN;
  const force = at.deceleration * car.mass * standardGravity;
  const frontForce = at.frontForceShare * force;
  try {
    return brakingEfficiency(adhesionUse({ car, frontForce, rearForce: force - frontForce }));
  } catch (error) {
    if (error instanceof OutOfRangeError) return NaN;
    throw error;
  }
}

function ruleFigures(
  settled: Settled,
  looks: readonly LoadLook[],
): Pick<StateFigures, 'rearBelowFront' | 'adhesionWithin' | 'rearUnderTorqueWheel'> {
  const verdicts = looks.map(({ setUp, driven }) =>
    annexFiveVerdict({ setUp, driven, padTemperatures: startPads(settled) }),
  );
  return {
    rearBelowFront: Number(verdicts.every((one) => one.rearBelowFront)),
    adhesionWithin: Number(verdicts.every((one) => one.adhesionWithinLimit)),
    rearUnderTorqueWheel: Number(verdicts.every((one) => one.rearUnderTorqueWheelLine)),
  };
}

function pullFigures(
  settled: Settled,
  { setUp }: LoadLook,
): Pick<StateFigures, 'yawMoment' | 'pulledDeceleration'> {
  const pull = brakePull({
    setUp,
    deceleration: pullDeceleration,
    working: [0, 1, 1, 1],
    padTemperatures: startPads(settled),
  });
  return { yawMoment: Math.abs(pull?.yawMoment ?? NaN), pulledDeceleration: pull?.deceleration ?? NaN };
}

function parkingFigures(
  settled: Settled,
  { setUp }: LoadLook,
): Pick<StateFigures, 'gradeByBrake' | 'gradeByTires' | 'gradeHeld'> {
  const brake = parkingBrakeOf(settled);
  const { parking } = settled;
  if (brake === null || parking === null) return { gradeByBrake: NaN, gradeByTires: NaN, gradeHeld: NaN };
  const torque = parkingTorque({ brake, force: parking.force });
  const { car, rearTire: tire } = setUp;
  const hold = parkingHold({ car, tire, torque, axle: 'rear', surfaceFactor: 1 });
  const gradeByTires = Math.min(hold.byTiresUphill, hold.byTiresDownhill);
  return { gradeByBrake: hold.byBrake, gradeByTires, gradeHeld: hold.held };
}

function curveOf(settled: Settled, { setUp, driven }: LoadLook): readonly (BalancePoint | undefined)[] {
  const line = installedLine(setUp, startPads(settled));
  const end = 0.999 * liftOffDeceleration(setUp.car);
  const inDrive = driven.front === 0 && driven.rear === 0 ? undefined : driven;
  return curveDecelerations.map((z) => (z > end ? undefined : installedPoint(setUp, line, z, inDrive)));
}
