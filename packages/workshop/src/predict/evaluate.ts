import { linePressures, lockOrder, pedalTravel, quickStop, repeatedStops } from '@standstill/braking';
import type {
  LockOrder,
  LockOrderInput,
  RepeatedStop,
  StopInput,
  StopMarch,
  StopSummary,
} from '@standstill/braking';
import type { Settled } from '../settle/settle.ts';
import type { Figures } from './figures.ts';

/** Roads on which a draw is looked at for a rear-first lock, as shares of the grippiest one that the tires may meet. */
const roads = [0.35, 0.7, 1] as const;
/** A dry road; the car meets it whatever road is asked about. */
const dry = 1;

/** The stop that a settled set-up is asked for. */
export function stopInputOf({ setUp, road, foot, speed, startTemperature }: Settled): StopInput {
  const rotorTemperatures = { front: startTemperature, rear: startTemperature };
  return { setUp, road, foot, speed, rotorTemperatures };
}

/** Lock order with the pads as warm as at the start of the stop, ABS and EBD taken as failed. */
export function lockInputOf({ setUp, road, startTemperature }: Settled): LockOrderInput {
  return { setUp, road, padTemperatures: { front: startTemperature, rear: startTemperature } };
}

/** The row of repeated stops. */
export function rowOf(settled: Settled, count: number): readonly RepeatedStop[] {
  return repeatedStops({ ...stopInputOf(settled), count, interval: settled.interval });
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
 * @param repeated - count of repeated stops; 0 leaves them out and their figure NaN
 * @returns the figures, SI
 */
export function evaluate(settled: Settled, march: StopMarch, repeated: number): Evaluation {
  const { setUp, foot } = settled;
  const stop = quickStop(stopInputOf(settled), march);
  const travel = pedalTravel({ setUp, pedalForce: foot.force });
  const pressures = linePressures({ setUp, pedalForce: foot.force });
  const order = lockOrder(lockInputOf(settled));
  const last = repeated > 0 ? rowOf(settled, repeated).at(-1) : undefined;
  const figures = {
    distance: stop.distance,
    time: stop.time,
    meanDeceleration: stop.meanDeceleration,
    forceAtLimit: order.at?.pedalForce ?? NaN,
    travel: travel.travel,
    travelShare: travel.share,
    frontPressure: pressures.front,
    rearPressure: pressures.rear,
    frontPeak: stop.front.peakInterface,
    rearPeak: stop.rear.peakInterface,
    lastDistance: last?.stop.distance ?? NaN,
    lockDeceleration: order.at?.deceleration ?? NaN,
    rearFirst: order.first === 'rear' || rearFirstElsewhere(settled) ? 1 : 0,
  };
  return { figures, stop, order };
}

/** The same question for the grippiest road that the tires may meet: the dry one, or a better one that is asked about. */
export function grippiestLockInputOf(settled: Settled): LockOrderInput {
  const input = lockInputOf(settled);
  const surfaceFactor = Math.max(dry, input.road.surfaceFactor);
  return { ...input, road: { ...input.road, surfaceFactor } };
}

function rearFirstElsewhere(settled: Settled): boolean {
  const input = grippiestLockInputOf(settled);
  return roads.some((share) => {
    const surfaceFactor = share * input.road.surfaceFactor;
    return lockOrder({ ...input, road: { ...input.road, surfaceFactor } }).first === 'rear';
  });
}
