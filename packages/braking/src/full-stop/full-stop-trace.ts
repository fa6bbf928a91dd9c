import type { FullMarch } from './full-march.ts';
import { fullStopWorkspace, summarizeFullStop, type FullStopSummary } from './full-stop.ts';
import type { FullStopInput } from './full-stop-input.ts';

/** One array a wheel: front-left, front-right, rear-left, rear-right. */
export type WheelTraces = readonly [Float64Array, Float64Array, Float64Array, Float64Array];

/**
 * A full stop over time: one value at the first touch, at every look of the control, where a wheel locks and at rest.
 */
export interface FullStopTrace {
  /** s from the first touch, never falling. */
  readonly time: Float64Array;
  /** m/s of the wheels' carriers over the road. */
  readonly speed: Float64Array;
  /** m from the first touch. */
  readonly distance: Float64Array;
  /** m/s² of the center of gravity. */
  readonly deceleration: Float64Array;
  /** rad, nose down positive. */
  readonly pitch: Float64Array;
  /** N at the pedal pad that the foot gives; a driver who holds back gives less, see `frontLinePressure`. */
  readonly pedalForce: Float64Array;
  /** Pa asked of the front outlet of the master cylinder. */
  readonly frontLinePressure: Float64Array;
  /** N m, yaw moment by unequal left and right forces; positive turns the nose to the left. */
  readonly yawMoment: Float64Array;
  /** rad/s. */
  readonly wheelSpeed: WheelTraces;
  /** 1, slip that the tire's force has followed. */
  readonly slip: WheelTraces;
  /** N on the road. */
  readonly load: WheelTraces;
  /** N against the motion. */
  readonly brakeForce: WheelTraces;
  /** N m. */
  readonly brakeTorque: WheelTraces;
  /** Pa at the caliper. */
  readonly pressure: WheelTraces;
  /** °C at the rubbing face. */
  readonly faceTemperature: WheelTraces;
}

export interface TracedFullStop {
  readonly summary: FullStopSummary;
  readonly trace: FullStopTrace;
}

const carColumns = 8;
const wheelColumns = 7;

/**
 * Answers a full stop over time, for drawing and for made-up logs, with its summary.
 *
 * Equation: as `fullStop`.
 * Assumes: as `fullStop`.
 * Valid: as `fullStop`. Between two times straight lines serve (`linearTable`).
 *
 * @param input - as for `fullStop`
 * @returns the summary, and the trace in the units written beside each of its arrays
 * @throws OutOfRangeError where an input cannot be
 * Source: [pacejka], [gillespie]
 * @example
 * fullStopTrace({ setUp: exampleSetUp, road: exampleRoad, foot: { kind: 'ramp', force: 300, rampTime: 0.2 }, speed: 27.8 }).trace.speed[0] // => 27.8
 */
export function fullStopTrace(input: FullStopInput): TracedFullStop {
  const march = fullStopWorkspace();
  const rows: number[][] = [];
  march.start(input, (at) => rows.push(readRow(at)));
  march.run();
  const column = (index: number): Float64Array => Float64Array.from(rows, (row) => row[index] ?? Number.NaN);
  const wheels = (group: number): WheelTraces => {
    const first = carColumns + 4 * group;
    return [column(first), column(first + 1), column(first + 2), column(first + 3)];
  };
  const trace: FullStopTrace = {
    time: column(0),
    speed: column(1),
    distance: column(2),
    deceleration: column(3),
    pitch: column(4),
    pedalForce: column(5),
    frontLinePressure: column(6),
    yawMoment: column(7),
    wheelSpeed: wheels(0),
    slip: wheels(1),
    load: wheels(2),
    brakeForce: wheels(3),
    brakeTorque: wheels(4),
    pressure: wheels(5),
    faceTemperature: wheels(6),
  };
  return { summary: summarizeFullStop(input, march), trace };
}

function readRow({ time, speed, dynamics, heat }: FullMarch): number[] {
  const { car, foot, body } = dynamics;
  const force = foot.seeks ? car.foot : foot.forceAt(time);
  const row = [time, speed, car.distance, car.deceleration, body.pitchAngle(car.pitch), force, car.asked];
  row.push(dynamics.yawMoment());
  for (let group = 0; group < wheelColumns; group += 1) {
    for (let wheel = 0; wheel < 4; wheel += 1) row.push(wheelFigure(group, wheel, dynamics, heat));
  }
  return row;
}

function wheelFigure(
  group: number,
  at: number,
  dynamics: FullMarch['dynamics'],
  { rotors }: FullMarch['heat'],
): number {
  const wheel = dynamics.wheels.each[at]!;
  switch (group) {
    case 0:
      return wheel.turning;
    case 1:
      return wheel.slip;
    case 2:
      return dynamics.loadOn(at);
    case 3:
      return wheel.force;
    case 4:
      return wheel.torque;
    case 5:
      return wheel.pressure;
    default:
      return rotors[at]!.interfaceTemperature;
  }
}
