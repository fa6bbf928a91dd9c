import { linearTable } from '@standstill/numerics';
import { usualPadTemperatures } from '../balance/pad-temperatures.ts';
import { padFriction } from '../corner/pad-friction.ts';
import { coolingCoefficients } from '../heat/cooling/cooling-coefficients.ts';
import { rotorHeatShare } from '../heat/rotor-heat-share.ts';
import { RotorState } from '../heat/rotor-state.ts';
import type { RotorStep } from '../heat/rotor-step.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Pad } from '../set-up/pad.ts';
import type { FullStopInput } from './full-stop-input.ts';
import type { StopDynamics } from './stop-dynamics.ts';

/** Layers of each rotor's half thickness in the full stop. */
const layers = 6;
/** Speed at which the cooling of a whole stop is read, over the speed at its start. */
const coolingSpeedShare = 0.6;

/**
 * The heat of four rotors in a full stop, and the friction of their pads that follows it.
 *
 * Equation: each rotor as `RotorState`, given the brake's work by `rotorHeatShare`; μ(t) in a straight line from the
 * friction now to the friction at the temperature that the face is heading for.
 * Assumes: cooling as at 0.6 of the speed at the start; the heat of one span between looks is spread evenly over it.
 * Source: [carslaw-jaeger], [charron-1943]
 */
export class WheelHeat {
  readonly rotors = [0, 1, 2, 3].map(() => new RotorState(layers)) as [
    RotorState,
    RotorState,
    RotorState,
    RotorState,
  ];
  /** J that each brake had made up to the last look. */
  readonly #given = new Float64Array(4);
  /** °C, greatest at the face of each rotor. */
  readonly hottest = new Float64Array(4);
  /** 1, part of the heat that the rotor takes. */
  readonly shares = new Float64Array(4);
  #frontPad!: Pad;
  #rearPad!: Pad;
  readonly #front: RotorStep = emptyStep();
  readonly #rear: RotorStep = emptyStep();

  /** Takes on a stop; every rotor is as warm all through as its axle is said to be. */
  take({ setUp, road, speed, rotorTemperatures }: FullStopInput, dynamics: StopDynamics): void {
    const temperatures = rotorTemperatures ?? usualPadTemperatures;
    this.#given.fill(0);
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const brake = wheel < 2 ? setUp.frontBrake : setUp.rearBrake;
      const temperature = wheel < 2 ? temperatures.front : temperatures.rear;
      const rotor = this.rotors[wheel]!;
      rotor.use(brake);
      rotor.warmTo(temperature);
      this.hottest[wheel] = temperature;
      this.shares[wheel] = rotorHeatShare(brake);
      dynamics.wheels.each[wheel]!.friction = padFriction({ pad: brake.pad, temperature });
      dynamics.wheels.each[wheel]!.frictionRate = 0;
    }
    dynamics.frictionTime = 0;
    this.#frontPad = setUp.frontBrake.pad;
    this.#rearPad = setUp.rearBrake.pad;
    const coolingSpeed = coolingSpeedShare * speed;
    this.#cool(
      this.#front,
      setUp.frontBrake,
      setUp.frontTire.rollingRadius,
      coolingSpeed,
      temperatures.front,
      road,
    );
    this.#cool(
      this.#rear,
      setUp.rearBrake,
      setUp.rearTire.rollingRadius,
      coolingSpeed,
      temperatures.rear,
      road,
    );
  }

  #cool(
    step: RotorStep,
    { rotor }: AxleBrake,
    rollingRadius: number,
    speed: number,
    temperature: number,
    road: FullStopInput['road'],
  ): void {
    const cooling = coolingCoefficients({ rotor, road, speed, rollingRadius, temperature });
    step.faceCoefficient = cooling.face;
    step.ventCoefficient = cooling.vent;
    step.airTemperature = road.airTemperature;
  }

  /** Gives the rotors the heat of `span` seconds that end at `time`, s, and sets the friction of the time after it. */
  look(dynamics: StopDynamics, time: number, span: number): void {
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const rotor = this.rotors[wheel]!;
      const step = wheel < 2 ? this.#front : this.#rear;
      const before = rotor.interfaceTemperature;
      const made = dynamics.wheels.each[wheel]!.brakeWork;
      const flux = (this.shares[wheel]! * (made - this.#given[wheel]!)) / (2 * rotor.sweptArea * span);
      this.#given[wheel] = made;
      step.duration = span;
      step.fluxAtStart = flux;
      step.fluxAtEnd = flux;
      rotor.step(step);
      const now = rotor.interfaceTemperature;
      if (now > this.hottest[wheel]!) this.hottest[wheel] = now;
      const pad = wheel < 2 ? this.#frontPad : this.#rearPad;
      const friction = linearTable(pad.frictionTemperatures, pad.frictions, now);
      const next = linearTable(pad.frictionTemperatures, pad.frictions, now + now - before);
      dynamics.wheels.each[wheel]!.friction = friction;
      dynamics.wheels.each[wheel]!.frictionRate = (next - friction) / span;
    }
    dynamics.frictionTime = time;
  }
}

function emptyStep(): RotorStep {
  return {
    duration: 0,
    fluxAtStart: 0,
    fluxAtEnd: 0,
    faceCoefficient: 0,
    ventCoefficient: 0,
    airTemperature: 20,
  };
}
