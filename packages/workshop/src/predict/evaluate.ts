import {
  boilingPointAtAge,
  linePressures,
  pedalTravel,
  quickStop,
  repeatedStops,
  strongestFoot,
} from '@standstill/braking';
import type { LockOrder, RepeatedStop, StopInput, StopMarch, StopSummary } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import type { Settled } from '../settle/settle.ts';
import type { Figures } from './figures.ts';
import { footThere } from './foot-there.ts';
import type { FootThere } from './foot-there.ts';
import {
  coldPads,
  leastFrontBias,
  padMoments,
  rearFirstWith,
  startPads,
  worseLockOrder,
} from './lock-looks.ts';

/** A foot this far beyond the tires' limit is still one that a driver without ABS may have (assumed). */
const nearLimit = 1.1;

/** The stop that a settled set-up is asked for, with no more force than the pedal has travel for. */
export function stopInputOf({ setUp, road, foot, speed, startTemperature }: Settled): StopInput {
  const rotorTemperatures = { front: startTemperature, rear: startTemperature };
  const there = footThere(setUp, foot.force);
  return { setUp: there.setUp, road, foot: { ...foot, force: there.force }, speed, rotorTemperatures };
}

/** The row of repeated stops; it ends before the first one that gets hotter than anything that can be computed. */
export function rowOf(settled: Settled, count: number): readonly RepeatedStop[] {
  const input = { ...stopInputOf(settled), interval: settled.interval };
  let [known, beyond] = [0, count + 1];
  let row: readonly RepeatedStop[] = [];
  for (let next = count; known + 1 < beyond; next = Math.floor((known + beyond) / 2)) {
    const found = rowOrNone(input, next);
    if (found === null) beyond = next;
    else [row, known] = [found, next];
  }
  return row;
}

function rowOrNone(
  input: StopInput & { readonly interval: number },
  count: number,
): readonly RepeatedStop[] | null {
  try {
    return repeatedStops({ ...input, count });
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

export interface Evaluation {
  readonly figures: Figures;
  readonly stop: StopSummary;
  readonly order: LockOrder;
}

/**
 * Answers every figure of one set-up in one draw.
 *
 * @param settled - the set-up and its question
 * @param march - room to work in
 * @param repeated - count of repeated stops; 0 leaves them out and their figures NaN
 * @returns the figures, SI
 */
export function evaluate(settled: Settled, march: StopMarch, repeated: number): Evaluation {
  const input = stopInputOf(settled);
  const there = footThere(settled.setUp, settled.foot.force);
  const stop = quickStop(input, march);
  const order = worseLockOrder(settled);
  const figures = {
    distance: there.force > 0 ? stop.distance : Infinity,
    time: stop.time,
    meanDeceleration: stop.meanDeceleration,
    ...footFigures(settled, there, order),
    frontPeak: stop.front.peakInterface,
    rearPeak: stop.rear.peakInterface,
    lockDeceleration: order.at?.deceleration ?? NaN,
    rearFirst: isRearFirst(settled, order) ? 1 : 0,
    ...rowFigures(settled, repeated),
  };
  return { figures, stop, order };
}

/** Warm as at the start of the stop, or cold as the air. */
function isRearFirst(settled: Settled, order: LockOrder): boolean {
  if (order.first === 'rear') return true;
  return [startPads, coldPads].some((pads) => rearFirstWith(settled, pads(settled)));
}

type FootFigure =
  | 'forceThere'
  | 'bottoms'
  | 'forceAtLimit'
  | 'limitReached'
  | 'travel'
  | 'travelShare'
  | 'frontPressure'
  | 'rearPressure'
  | 'heldForce'
  | 'heldTravel'
  | 'heldTravelShare'
  | 'heldFrontPressure'
  | 'heldRearPressure';

function footFigures(
  { setUp, foot }: Settled,
  there: FootThere,
  { at }: LockOrder,
): Pick<Figures, FootFigure> {
  const modulates = setUp.antilock.kind === 'none';
  const limit = modulates ? (at?.pedalForce ?? Infinity) : Infinity;
  const travel = pedalTravel({ setUp, pedalForce: foot.force });
  const pressures = linePressures({ setUp: there.setUp, pedalForce: there.force });
  const heldForce = Math.min(there.pedalForce, limit);
  const held = pedalTravel({ setUp, pedalForce: Math.min(foot.force, limit) });
  const heldPressures = limit < there.pedalForce ? linePressures({ setUp, pedalForce: limit }) : pressures;
  return {
    forceThere: there.pedalForce,
    bottoms: there.pedalForce < Math.min(foot.force, nearLimit * limit) ? 1 : 0,
    forceAtLimit: at?.pedalForce ?? strongestFoot,
    limitReached: at === null ? 0 : 1,
    travel: travel.travel,
    travelShare: travel.share,
    frontPressure: pressures.front,
    rearPressure: pressures.rear,
    heldForce,
    heldTravel: held.travel,
    heldTravelShare: held.share,
    heldFrontPressure: heldPressures.front,
    heldRearPressure: heldPressures.rear,
  };
}

function rowFigures(
  settled: Settled,
  repeated: number,
): Pick<Figures, 'lastDistance' | 'rowStops' | 'rearFirstHot' | 'fluidPeak' | 'fluidBoils'> {
  const row = repeated > 0 ? rowOf(settled, repeated) : [];
  const last = row.at(-1);
  const worst = leastFrontBias(settled, padMoments(row));
  if (last === undefined || worst === null)
    return { lastDistance: NaN, rowStops: NaN, rearFirstHot: NaN, fluidPeak: NaN, fluidBoils: NaN };
  const { cameToRest, distance } = last.stop;
  return {
    lastDistance: cameToRest && row.length === repeated ? distance : NaN,
    rowStops: cameToRest ? 1 : 0,
    rearFirstHot: rearFirstWith(settled, worst) ? 1 : 0,
    ...fluidFigures(settled, row),
  };
}

function fluidFigures(
  { setUp }: Settled,
  row: readonly RepeatedStop[],
): Pick<Figures, 'fluidPeak' | 'fluidBoils'> {
  const fluidPeak = hottestFluid(row);
  return { fluidPeak, fluidBoils: fluidPeak > boilingPointAtAge(setUp.fluid) ? 1 : 0 };
}

/** °C, of both axles, through the row and while the car stands after it; NaN where there is no row. */
export function hottestFluid(row: readonly RepeatedStop[]): number {
  return row.length === 0 ? NaN : Math.max(...row.map(({ fluid }) => Math.max(fluid.front, fluid.rear)));
}
