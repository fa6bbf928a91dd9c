/**
 * A generic control of slip and wheel deceleration: it lets pressure off a wheel that is about to lock (dump), waits until
 * the wheel has come back (hold) and builds up again, fast to near where it let go, then slowly. No maker's control.
 */
export interface AntilockControl {
  /** s between two looks at the wheels, whatever the integrator's step: 0.005 to 0.01. */
  readonly samplePeriod: number;
  /** κ, 1, slip above which pressure is let off. */
  readonly slipThreshold: number;
  /** m/s² of wheel rim deceleration above the car's own at which pressure is let off, once the slip is near `slipThreshold`. */
  readonly rimDeceleration: number;
  /** κ, 1, slip below which a wheel is taken to have come back. */
  readonly slipFloor: number;
  /** s, time constant of letting off. */
  readonly dumpTime: number;
  /** 1, part of the pressure at which it let go that is given back fast. */
  readonly fastShare: number;
  /** s in which the slow build-up would make that pressure once more. */
  readonly buildTime: number;
}

/** The control that is taken where none is stated: generic, assumed, tuned for no car. */
export const usualAntilockControl: AntilockControl = {
  samplePeriod: 0.005,
  slipThreshold: 0.16,
  rimDeceleration: 25,
  slipFloor: 0.06,
  dumpTime: 0.05,
  fastShare: 0.85,
  buildTime: 0.8,
};
