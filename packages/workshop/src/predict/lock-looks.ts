import { lockOrder, padFriction, rearFirstDecelerations, undriven } from '@standstill/braking';
import type {
  LockOrder,
  PadTemperatures,
  RearFirstDecelerations,
  RepeatedStop,
  Road,
} from '@standstill/braking';
import type { Settled } from '../settle/settle.ts';
import { loadLooks } from './load-looks.ts';
import type { LoadLook } from './load-looks.ts';
import { loadStates } from './load-state.ts';
import type { LoadState } from './load-state.ts';

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

/** A state of load and drive. */
type Look = Pick<LoadLook, 'setUp'> & Partial<Pick<LoadLook, 'driven'>>;

/**
 * Lock order on the road asked about, ABS and EBD taken as failed: the worse of standstill and test speed, which is the
 * one with the rear first, else the one that locks at less deceleration.
 *
 * @param settled - the set-up and its question
 * @param looks - states of load and drive, of which the worst is taken; the plain one as tested where left out
 * @returns the lock order
 */
export function worseLockOrder(settled: Settled, looks: readonly Look[] = [settled]): LockOrder {
  const { road } = settled;
  const padTemperatures = startPads(settled);
  const orders = looks.flatMap(({ setUp, driven = undriven }) =>
    speedsOf(settled).map((speed) => lockOrder({ setUp, road, speed, driven, padTemperatures })),
  );
  return orders.reduce((worse, other) => (isWorse(other, worse) ? other : worse));
}

function isWorse(one: LockOrder, other: LockOrder): boolean {
  if ((one.first === 'rear') !== (other.first === 'rear')) return one.first === 'rear';
  return (one.at?.deceleration ?? Infinity) < (other.at?.deceleration ?? Infinity);
}

/** Pads as cold as the air: the first stop of a morning. */
export function coldPads({ road: { airTemperature } }: Settled): PadTemperatures {
  return { front: airTemperature, rear: airTemperature };
}

/** True where the rear locks first with pads of these temperatures on some road up to dry grip, slow or fast, loaded or not. */
export function rearFirstWith(
  settled: Settled,
  padTemperatures: PadTemperatures,
  states: readonly LoadState[] = loadStates,
): boolean {
  const road = grippiest(settled);
  return loadLooks(settled, states).some(({ setUp, driven }) =>
    speedsOf(settled).some((speed) =>
      roads.some((share) => {
        const surfaceFactor = share * road.surfaceFactor;
        const input = { setUp, road: { ...road, surfaceFactor }, speed, driven, padTemperatures };
        return lockOrder(input).first === 'rear';
      }),
    ),
  );
}

/** Where and in which state of the car the rear locks first. */
export interface RearFirstFound extends RearFirstDecelerations {
  readonly states: readonly LoadState[];
  /** True where it takes regeneration or creep. */
  readonly byDriveAlone: boolean;
}

/**
 * The same with every road looked at, for the central values.
 *
 * @param settled - the set-up and its question
 * @param padTemperatures - °C, each axle's own
 * @param states - which states of load
 * @returns least and greatest deceleration over g with the rear first, and the states; null where there is none
 */
export function rearFirstRange(
  settled: Settled,
  padTemperatures: PadTemperatures,
  states: readonly LoadState[] = loadStates,
): RearFirstFound | null {
  const road = grippiest(settled);
  const found = loadLooks(settled, states).flatMap(({ state, setUp, driven, byDrive }) =>
    speedsOf(settled).flatMap((speed) => {
      const range = rearFirstDecelerations({ setUp, road, speed, driven, padTemperatures });
      return range === null ? [] : [{ ...range, state, byDrive }];
    }),
  );
  if (found.length === 0) return null;
  return {
    lowest: Math.min(...found.map(({ lowest }) => lowest)),
    highest: Math.max(...found.map(({ highest }) => highest)),
    states: loadStates.filter((state) => found.some((one) => one.state === state)),
    byDriveAlone: found.every(({ byDrive }) => byDrive),
  };
}

/** The dry road, or a better one that is asked about; the roads with less grip stand for water, too. */
function grippiest({ road }: Settled): Road {
  return { ...road, waterDepth: 0, surfaceFactor: Math.max(dry, road.surfaceFactor) };
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
