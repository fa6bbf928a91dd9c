import { summarize, type StopSummary } from './quick-stop.ts';
import type { StopInput } from './stop-input.ts';
import { StopMarch } from './stop-march.ts';

/**
 * A stop over time, one value per node. Nodes are not evenly spaced; where a wheel pair lets go two stand at one time, the
 * instant before and after.
 */
export interface StopTrace {
  /** s from the first touch, never falling. */
  readonly time: Float64Array;
  /** m/s. */
  readonly speed: Float64Array;
  /** m from the first touch. */
  readonly distance: Float64Array;
  /** m/s². */
  readonly deceleration: Float64Array;
  /** Pa, after a driver has taken back what was too much. */
  readonly frontPressure: Float64Array;
  /** Pa. */
  readonly rearPressure: Float64Array;
  /** N of both front tires. */
  readonly frontForce: Float64Array;
  /** N of both rear tires. */
  readonly rearForce: Float64Array;
  /** °C at the rubbing faces. */
  readonly frontTemperature: Float64Array;
  /** °C at the rubbing faces. */
  readonly rearTemperature: Float64Array;
}

export interface TracedStop {
  readonly summary: StopSummary;
  readonly trace: StopTrace;
}

/** Layers and refinement with which a traced stop is marched. */
const traceLayers = 12;
const traceRefinement = 8;

/**
 * Answers a stop over time, for drawing and for made-up logs, with its summary.
 *
 * Equation: as `quickStop`, with eight times as many steps and four times as many layers in the rotors.
 * Assumes: as `quickStop`.
 * Valid: as `quickStop`. Between nodes straight lines serve (`linearTable`).
 *
 * @param input - as for `quickStop`; its `refinement` multiplies the trace's own
 * @returns the summary; time, s; speed, m/s; distance, m; deceleration, m/s²; pressures, Pa; forces, N; temperatures, °C
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie], [limpert]
 * @example
 * traceStop({ setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 }).trace.speed[0] // => 27.8
 */
export function traceStop(input: StopInput): TracedStop {
  const march = new StopMarch(traceLayers);
  const nodes: number[][] = [];
  march.start({ ...input, refinement: traceRefinement * (input.refinement ?? 1) }, true, (at) => {
    nodes.push(readNode(at));
  });
  march.run();
  const column = (index: number): Float64Array =>
    Float64Array.from(nodes, (node) => node[index] ?? Number.NaN);
  return {
    summary: summarize(input, march),
    trace: {
      time: column(0),
      speed: column(1),
      distance: column(2),
      deceleration: column(3),
      frontPressure: column(4),
      rearPressure: column(5),
      frontForce: column(6),
      rearForce: column(7),
      frontTemperature: column(8),
      rearTemperature: column(9),
    },
  };
}

function readNode({ time, speed, distance, deceleration, car }: StopMarch): number[] {
  const { front, rear, line, keeper } = car;
  const pressure = keeper.driver.pressure;
  const temperatures = [front.heat.interfaceTemperature, rear.heat.interfaceTemperature];
  const forces = [front.force, rear.force];
  return [time, speed, distance, deceleration, pressure, line.rearAt(pressure), ...forces, ...temperatures];
}
