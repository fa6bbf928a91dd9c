import { coolingCoefficients } from '../heat/cooling/cooling-coefficients.ts';
import { bodyInWind } from '../heat/cooling/body-in-wind.ts';
import { CornerState } from '../heat/corner/corner-state.ts';
import type { RotorStep } from '../heat/rotor-step.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { Tire } from '../set-up/tire.ts';
import type { RotorTemperatures } from '../stop/stop-input.ts';

/** s, longest step while driving; while parked steps grow by a factor from node to node up to a longest one. */
const drivenStep = 5;
const parkedGrowth = 1.6;
const parkedStep = 60;
/** m/s, below which a car is taken as parked. */
const walking = 0.3;

/** A corner of an axle with what decides how it cools. */
class Axle {
  readonly corner: CornerState;
  #brake: AxleBrake | undefined;
  #tire: Tire | undefined;
  readonly #step: RotorStep = {
    duration: 0,
    fluxAtStart: 0,
    fluxAtEnd: 0,
    faceCoefficient: 0,
    ventCoefficient: 0,
    airTemperature: 20,
  };

  constructor(layers: number, padLayers: number) {
    this.corner = new CornerState(layers, padLayers);
  }

  take(brake: AxleBrake, tire: Tire): void {
    this.#brake = brake;
    this.#tire = tire;
    this.corner.use(brake);
  }

  /** Sets how the body cools at a speed, m/s. */
  blow(road: Road, speed: number): void {
    const { airTemperature, airDensity } = road;
    const temperature = this.corner.bodyTemperature;
    this.corner.bodyCoefficient = bodyInWind({ speed, temperature, airTemperature, airDensity });
  }

  cool(road: Road, speed: number, duration: number): void {
    if (this.#brake === undefined || this.#tire === undefined) throw new TypeError('no set-up was taken');
    const { rollingRadius } = this.#tire;
    const temperature = this.corner.interfaceTemperature;
    const { rotor } = this.#brake;
    const cooling = coolingCoefficients({ rotor, road, speed, rollingRadius, temperature });
    this.blow(road, speed);
    this.#step.duration = duration;
    this.#step.faceCoefficient = cooling.face;
    this.#step.ventCoefficient = cooling.vent;
    this.#step.airTemperature = road.airTemperature;
    this.corner.step(this.#step);
  }
}

/** Both axles' corners and how they cool while nobody brakes. */
export class BrakesHeat {
  readonly #front: Axle;
  readonly #rear: Axle;
  #road: Road | undefined;

  /**
   * @param layers - layers of each half rotor, 1
   * @param padLayers - layers of each pad, 1
   */
  constructor(layers: number, padLayers: number) {
    this.#front = new Axle(layers, padLayers);
    this.#rear = new Axle(layers, padLayers);
  }

  get front(): CornerState {
    return this.#front.corner;
  }

  get rear(): CornerState {
    return this.#rear.corner;
  }

  /** Takes on a set-up, a road and the temperatures of the rotors, °C, that driving has brought about. */
  take(setUp: SetUp, road: Road, temperatures: RotorTemperatures): void {
    this.#road = road;
    this.#front.take(setUp.frontBrake, setUp.frontTire);
    this.#rear.take(setUp.rearBrake, setUp.rearTire);
    this.front.warmAsDriven(temperatures.front, road.airTemperature);
    this.rear.warmAsDriven(temperatures.rear, road.airTemperature);
  }

  /** Presses the pads at a speed, m/s, and opens the account of both axles. */
  press(speed: number): void {
    if (this.#road === undefined) throw new TypeError('no road was taken');
    this.#front.blow(this.#road, speed);
    this.#rear.blow(this.#road, speed);
    for (const corner of [this.front, this.rear]) {
      corner.pressed = true;
      corner.openAccount();
    }
  }

  release(): void {
    this.front.pressed = false;
    this.rear.pressed = false;
  }

  /**
   * Cools both axles for a time, s, while the speed changes in a straight line from one to another, m/s; `onStep` hears
   * s since the start and the speed after every step and may end it by answering true. Answers s that it took.
   */
  cool(
    duration: number,
    [from, to]: readonly [number, number],
    onStep: (time: number, speed: number) => boolean,
    longest = drivenStep,
  ): number {
    const road = this.#road;
    if (road === undefined) throw new TypeError('no road was taken');
    const isParked = Math.max(from, to) < walking;
    let time = 0;
    let size = isParked ? 2 : Math.min(longest, duration / Math.ceil(duration / longest));
    while (duration - time > 1e-9 * duration) {
      const step = duration - time < 1.2 * size ? duration - time : size;
      const speed = from + ((to - from) * (time + 0.5 * step)) / duration;
      this.#front.cool(road, speed, step);
      this.#rear.cool(road, speed, step);
      time += step;
      if (onStep(time, from + ((to - from) * time) / duration)) break;
      if (isParked) size = Math.min(parkedStep, parkedGrowth * size);
    }
    return time;
  }
}
