import { requireRange } from '@standstill/numerics';
import { coolingCoefficients } from '../heat/cooling/cooling-coefficients.ts';
import type { RotorState } from '../heat/rotor-state.ts';
import type { RotorStep } from '../heat/rotor-step.ts';
import { frontParts, rearParts, type AxleParts } from './axle-parts.ts';
import { summarize, type StopSummary } from './quick-stop.ts';
import type { RotorTemperatures, StopInput } from './stop-input.ts';
import { StopMarch } from './stop-march.ts';

export interface RepeatedStopsInput extends StopInput {
  /** How many stops. */
  readonly count: number;
  /** s from the first touch of one stop to that of the next. */
  readonly interval: number;
}

export interface RepeatedStop {
  /** 1 for the first. */
  readonly number: number;
  /** °C, rings at the first touch, their heat spread evenly. */
  readonly bulkAtStart: RotorTemperatures;
  readonly stop: StopSummary;
  /** 1, mean deceleration over that of the first stop: below 1 the brakes have faded. */
  readonly shareOfFirst: number;
}

/** Layers of the rotors' half thickness over a row of stops. */
const rowLayers = 8;
/** s, longest step of the cooling between stops. */
const coolingStep = 2;

/**
 * Answers how a row of equal stops goes, the rotors carrying their heat from one to the next: fade per stop.
 *
 * Equation: each stop as `quickStop`; between them the rotors cool by conduction, convection at the test speed
 * (`coolingCoefficients`) and radiation, for the interval less the stop.
 * Assumes: the speed is regained at once, so that the whole rest of the interval cools at test speed (a little too
 * much); pads start each stop as warm as the rotor's face; nothing flows into the hat.
 * Valid: 1 to 200 stops; interval up to an hour. Where a stop does not come to rest, the row ends with it.
 *
 * @param input - as for `quickStop`; count of stops; interval from first touch to first touch, s
 * @returns per stop: its number, temperatures at its start, °C, its summary and its deceleration over the first's
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert], [newcomb-spurr]
 * @example
 * repeatedStops({ setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8, count: 3, interval: 45 }).length // => 3
 */
export function repeatedStops(input: RepeatedStopsInput): readonly RepeatedStop[] {
  const count = requireRange('number of stops', input.count, '', 1, 200);
  const interval = requireRange('interval', input.interval, 's', 0, 3600);
  const march = new StopMarch(rowLayers);
  const row: RepeatedStop[] = [];
  for (let number = 1; number <= count; number += 1) {
    march.start(input, number === 1);
    const bulkAtStart = bulkTemperatures(march);
    march.run();
    const stop = summarize(input, march);
    const first = row[0]?.stop ?? stop;
    row.push({ number, bulkAtStart, stop, shareOfFirst: stop.meanDeceleration / first.meanDeceleration });
    if (!stop.cameToRest) break;
    cool(march, input, interval - stop.time);
  }
  return row;
}

function bulkTemperatures({ car }: StopMarch): RotorTemperatures {
  return { front: car.front.heat.bulkTemperature(), rear: car.rear.heat.bulkTemperature() };
}

function cool({ car }: StopMarch, { setUp, road, speed }: StopInput, duration: number): void {
  if (duration <= 0) return;
  coolRotor(car.front.heat, frontParts(setUp, road), speed, duration);
  coolRotor(car.rear.heat, rearParts(setUp, road), speed, duration);
}

function coolRotor(
  heat: RotorState,
  { brake, tire, road }: AxleParts,
  speed: number,
  duration: number,
): void {
  const steps = Math.ceil(duration / coolingStep);
  for (let i = 0; i < steps; i += 1) {
    const temperature = heat.interfaceTemperature;
    const { rollingRadius } = tire;
    const cooling = coolingCoefficients({ rotor: brake.rotor, road, speed, rollingRadius, temperature });
    const step: RotorStep = {
      duration: duration / steps,
      fluxAtStart: 0,
      fluxAtEnd: 0,
      faceCoefficient: cooling.face,
      ventCoefficient: cooling.vent,
      airTemperature: road.airTemperature,
    };
    heat.step(step);
  }
}
