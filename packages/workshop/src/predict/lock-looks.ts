import { lockOrder, padFriction, rearFirstDecelerations } from '@standstill/braking';
import type {
  LockOrder,
  LockOrderInput,
  PadTemperatures,
  RearFirstDecelerations,
  RepeatedStop,
} from '@standstill/braking';
import type { Settled } from '../settle/settle.ts';

/** Roads on which a draw is looked at for a rear-first lock, as shares of the grippiest one that the tires may meet. */
const roads = [0.35, 0.7, 1] as const;
/** A dry road; the car meets it whatever road is asked about. */
const dry = 1;

/** Pads as warm as at the start of the first stop. */
export function startPads({ startTemperature }: Settled): PadTemperatures {
  return { front: startTemperature, rear: startTemperature };
}

/** At rest, and at the speed asked about, where lift takes load off the axles. m/s. */
function speedsOf({ speed }: Settled): readonly number[] {
  return [0, speed];
}

/**
 * Lock order on the road asked about, ABS and EBD taken as failed: the worse of standstill and test speed, which is the
 * one with the rear first, else the one that locks at less deceleration.
 *
 * @param settled - the set-up and its question
 * @returns the lock order
 */
export function worseLockOrder(settled: Settled): LockOrder {
  const { setUp, road } = settled;
  const orders = speedsOf(settled).map((speed) =>
    lockOrder({ setUp, road, speed, padTemperatures: startPads(settled) }),
  );
  return orders.reduce((worse, other) => (isWorse(other, worse) ? other : worse));
}

function isWorse(one: LockOrder, other: LockOrder): boolean {
  if ((one.first === 'rear') !== (other.first === 'rear')) return one.first === 'rear';
  return (one.at?.deceleration ?? Infinity) < (other.at?.deceleration ?? Infinity);
}

/** True where the rear locks first with pads of these temperatures on some road up to dry grip, slow or fast. */
export function rearFirstWith(settled: Settled, padTemperatures: PadTemperatures): boolean {
  const input = grippiest(settled, padTemperatures);
  return speedsOf(settled).some((speed) =>
    roads.some((share) => {
      const surfaceFactor = share * input.road.surfaceFactor;
      return lockOrder({ ...input, speed, road: { ...input.road, surfaceFactor } }).first === 'rear';
    }),
  );
}

/**
 * The same with every road looked at, for the central values.
 *
 * @param settled - the set-up and its question
 * @param padTemperatures - °C, each axle's own
 * @returns least and greatest deceleration over g with the rear first; null where there is none
 */
export function rearFirstRange(
  settled: Settled,
  padTemperatures: PadTemperatures,
): RearFirstDecelerations | null {
  const input = grippiest(settled, padTemperatures);
  const found = speedsOf(settled).flatMap((speed) => rearFirstDecelerations({ ...input, speed }) ?? []);
  if (found.length === 0) return null;
  return {
    lowest: Math.min(...found.map(({ lowest }) => lowest)),
    highest: Math.max(...found.map(({ highest }) => highest)),
  };
}

/** The dry road, or a better one that is asked about. */
function grippiest({ setUp, road }: Settled, padTemperatures: PadTemperatures): LockOrderInput {
  const surfaceFactor = Math.max(dry, road.surfaceFactor);
  return { setUp, road: { ...road, surfaceFactor }, padTemperatures };
}

/** Pad temperatures at one moment of the repeated stops. */
export interface PadMoment {
  /** 1 for the first stop. */
  readonly stop: number;
  readonly pads: PadTemperatures;
}

/** °C, up to which pad friction can be asked for at all. */
const hottestPads = 1500;

/** Each stop's start, and the hottest that its axles get. */
export function padMoments(row: readonly RepeatedStop[]): readonly PadMoment[] {
  return row.flatMap(({ number, bulkAtStart, stop }) => [
    { stop: number, pads: bulkAtStart },
    {
      stop: number,
      pads: {
        front: Math.min(hottestPads, stop.front.peakInterface),
        rear: Math.min(hottestPads, stop.rear.peakInterface),
      },
    },
  ]);
}

/**
 * The moment at which the front pads have faded most against the rear ones: where a rear-first lock is likeliest.
 *
 * @param settled - the set-up
 * @param moments - at least one
 * @returns temperatures, °C
 */
export function leastFrontBias({ setUp }: Settled, moments: readonly PadMoment[]): PadTemperatures | null {
  const bias = ({ front, rear }: PadTemperatures): number =>
    padFriction({ pad: setUp.frontBrake.pad, temperature: front }) /
    padFriction({ pad: setUp.rearBrake.pad, temperature: rear });
  let least: PadTemperatures | null = null;
  for (const { pads } of moments) if (least === null || bias(pads) < bias(least)) least = pads;
  return least;
}
