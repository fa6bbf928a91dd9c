/** What holds the car when it is parked: two equal brakes on one axle, pulled by a lever or pedal over a cable. */
export type ParkingBrake = ParkingShoes | ParkingCaliper;

interface ParkingPull {
  /** 1, cable pull (both wheels together) over force of hand or foot. */
  readonly leverRatio: number;
  /** 1, share of the pull that arrives at the two wheels. */
  readonly cableEfficiency: number;
}

/** Shoes in a drum: the rear brake itself, or a small drum inside the rotor's hat. */
export interface ParkingShoes extends ParkingPull {
  readonly kind: 'shoes';
  /** 1, force on each shoe over cable pull at that wheel. */
  readonly shoeLeverRatio: number;
  /** C*, 1, at the lining's cold friction. */
  readonly brakeFactor: number;
  /** m, inner radius of the drum. */
  readonly drumRadius: number;
}

/** A caliper that a cable clamps. */
export interface ParkingCaliper extends ParkingPull {
  readonly kind: 'caliper';
  /** 1, clamp force over cable pull at that wheel, losses of the screw or cam in it. */
  readonly clampRatio: number;
  /** μ of the cold pads, 1. */
  readonly friction: number;
  /** r_e, m. */
  readonly effectiveRadius: number;
}
