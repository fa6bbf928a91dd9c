import {
  assistLost,
  brakedDeceleration,
  bulkModulusAt,
  circuitLost,
  circuitsOf,
  greatestForceWithin,
  knockedBack,
  linePressures,
  pedalCurve,
  pedalFirmness,
  pedalForceForDeceleration,
  pedalTravel,
  pushesWithoutEngine,
  reservoirDemand,
} from '@standstill/braking';
import type { Circuit, CircuitShare, SetUp } from '@standstill/braking';
import { orNone } from '../draws/or-none.ts';
import { distanceFromHundred, reference } from './pedal-question.ts';
import type { SettledPedal } from './pedal-question.ts';

/** Answers by name, SI; NaN where there is none; flags are 1 or 0. The same names for every draw of a set-up. */
export type PedalFigures = Readonly<Record<string, number>>;

/** Points of the curve, pushes without engine, and forces that firmness is asked at, as shares of the asked force. */
export const curvePoints = 21;
export const pushCount = 6;
export const firmnessShares = [0.25, 0.5, 1] as const;
/** °C. */
export const hotFluidTemperature = 120;
/** m of friction material at which a pad is worn out (common practice; the maker's figure overrides it). */
export const wearLimit = 0.002;

/**
 * Every figure of one pedal in one draw.
 *
 * @param settled - the set-up with its question
 * @param wanted - m/s², deceleration at which firmness is asked too
 * @returns the figures
 */
export function pedalFigures(settled: SettledPedal, wanted: number): PedalFigures {
  return {
    ...pushFigures(settled),
    ...curveFigures(settled),
    ...firmnessFigures(settled, wanted),
    ...stateFigures('assist', settled, { setUp: assistLost(settled.setUp) }),
    ...Object.assign(
      {},
      ...circuitsOf(settled.setUp).map((lost) => stateFigures(lost, settled, { setUp: settled.setUp, lost })),
    ),
    ...pushesFigures(settled),
    ...wearFigures(settled),
  };
}

function pushFigures({ setUp, foot, details }: SettledPedal): Record<string, number> {
  const pedalForce = foot.force;
  const { travel, share, parts, strokeReserve, bottomed, hoseBeyondTable } = pedalTravel({
    setUp,
    pedalForce,
  });
  const { front, rear } = linePressures({ setUp, pedalForce });
  const bulkModulus = bulkModulusAt({
    bulkModulus: setUp.fluid.bulkModulus,
    temperature: hotFluidTemperature,
  });
  const hot: SetUp = { ...setUp, fluid: { ...setUp.fluid, bulkModulus } };
  const first = pedalTravel({ setUp: knockedBack(setUp, details.hubs), pedalForce });
  return {
    travel,
    travelShare: share,
    travelLeft: setUp.pedal.availableTravel - travel,
    strokeReserve,
    frontPressure: front,
    rearPressure: rear,
    bottoms: bottomed ? 1 : 0,
    hoseBeyondTable: hoseBeyondTable ? 1 : 0,
    ...Object.fromEntries(Object.entries(parts).map(([part, taken]) => [`part.${part}`, taken])),
    knockBack: first.travel - travel,
    knockBackShare: first.share,
    hotFluid: pedalTravel({ setUp: hot, pedalForce }).travel - travel,
    fastPush: travel - pedalTravel({ setUp, pedalForce, airExponent: 1.4 }).travel,
  };
}

function curveFigures({ setUp, foot }: SettledPedal): Record<string, number> {
  const figures: Record<string, number> = {};
  for (let point = 0; point < curvePoints; point += 1) {
    const pedalForce = (point / (curvePoints - 1)) * foot.force;
    const { front, rear } = linePressures({ setUp, pedalForce });
    figures[`curve.${point}.travel`] = pedalTravel({ setUp, pedalForce }).travel;
    figures[`curve.${point}.front`] = front;
    figures[`curve.${point}.rear`] = rear;
  }
  const { runOutForce } = pedalCurve({ setUp, greatestForce: foot.force, count: 3 });
  figures['runOut'] = Number.isFinite(runOutForce) ? runOutForce : NaN;
  return figures;
}

function firmnessFigures({ setUp, road, foot }: SettledPedal, wanted: number): Record<string, number> {
  const figures: Record<string, number> = {};
  const at = (pedalForce: number): number => pedalFirmness({ setUp, pedalForce: Math.max(3, pedalForce) });
  firmnessShares.forEach((share, index) => (figures[`firmness.${index}`] = at(share * foot.force)));
  const pedalForce = pedalForceForDeceleration({ setUp, road, deceleration: wanted });
  figures['firmness.wanted.force'] = pedalForce ?? NaN;
  figures['firmness.wanted'] = pedalForce === undefined ? NaN : at(pedalForce);
  return figures;
}

interface State {
  readonly setUp: SetUp;
  /** The lost circuit; none where both hold. */
  readonly lost?: Circuit;
}

interface Pushed {
  readonly travel: number;
  readonly extraTravel: number;
  /** What is left of travel or stroke, whichever is less, m at the pedal pad or the cylinder. */
  readonly left: number;
  readonly frontPressure: number;
  readonly rearPressure: number;
}

/** One failed state, held against the reference. */
function stateFigures(name: string, settled: SettledPedal, state: State): Record<string, number> {
  const { setUp } = state;
  const { road } = settled;
  const live = liveOf(state);
  const push = (pedalForce: number): Pushed => pushed(settled, state, pedalForce);
  const wanted = { setUp, road, deceleration: reference.deceleration, live };
  const needed = pedalForceForDeceleration(wanted);
  const at = push(Math.max(1, needed ?? reference.pedalForce));
  const there = greatestForceWithin((force) => push(force).left, reference.pedalForce);
  const { frontPressure, rearPressure } = there > 0 ? push(there) : { frontPressure: 0, rearPressure: 0 };
  const deceleration = brakedDeceleration({ setUp, road, live, frontPressure, rearPressure });
  const short = needed === undefined || needed > there;
  return {
    [`${name}.travel`]: at.travel,
    [`${name}.extraTravel`]: at.extraTravel,
    [`${name}.travelLeft`]: setUp.pedal.availableTravel - at.travel,
    [`${name}.there`]: there,
    [`${name}.front`]: frontPressure,
    [`${name}.rear`]: rearPressure,
    [`${name}.deceleration`]: deceleration,
    [`${name}.distance`]: distanceFromHundred(deceleration),
    [`${name}.needed`]: needed ?? NaN,
    [`${name}.short`]: short ? 1 : 0,
    [`${name}.bottoms`]: at.left < 0 ? 1 : 0,
  };
}

function liveOf({ setUp, lost }: State): CircuitShare {
  return lost === undefined ? { front: 1, rear: 1 } : circuitLost({ setUp, lost, pedalForce: 0 }).live;
}

function pushed({ details }: SettledPedal, { setUp, lost }: State, pedalForce: number): Pushed {
  if (lost === undefined) {
    const { travel, strokeReserve } = pedalTravel({ setUp, pedalForce });
    const { front, rear } = linePressures({ setUp, pedalForce });
    const left = Math.min(strokeReserve, setUp.pedal.availableTravel - travel);
    return { travel, extraTravel: 0, left, frontPressure: front, rearPressure: rear };
  }
  const found = circuitLost({ setUp, lost, pedalForce, strokes: details.strokes ?? undefined });
  return { ...found, left: Math.min(found.strokeReserve, found.travelLeft) };
}

function pushesFigures({ setUp, foot, details, ambientPressure }: SettledPedal): Record<string, number> {
  const { booster } = setUp;
  const { chambers } = details;
  if (booster.kind !== 'vacuum' || chambers === null) return {};
  const vacuum = Math.min(booster.vacuum, 0.99 * ambientPressure);
  const input = { chambers, pedalForce: foot.force, count: pushCount, ambientPressure };
  const figures: Record<string, number> = {};
  const pushes = orNone(() =>
    pushesWithoutEngine({ ...input, setUp: { ...setUp, booster: { ...booster, vacuum } } }),
  );
  for (let push = 0; push < pushCount; push += 1) {
    figures[`off.${push}.vacuum`] = pushes?.vacuum[push] ?? NaN;
    figures[`off.${push}.front`] = pushes?.frontPressure[push] ?? NaN;
    figures[`off.${push}.travel`] = pushes?.travel[push] ?? NaN;
  }
  return figures;
}

function wearFigures({ setUp, details }: SettledPedal): Record<string, number> {
  const { frontBrake, rearBrake } = setUp;
  const demand = reservoirDemand({
    frontBrake,
    rearBrake,
    frontWear: wearLeft(frontBrake.pad.thickness),
    rearWear: wearLeft(rearBrake.pad.thickness),
  });
  const { reservoirVolume } = details;
  return { wearDemand: demand, reservoir: reservoirVolume, reservoirEmpty: demand > reservoirVolume ? 1 : 0 };
}

/** m of friction material that is left to wear. */
function wearLeft(thickness: number): number {
  return Math.max(0, thickness - wearLimit);
}
