/** A caliper, floating or fixed. Pistons are counted on ONE side; see `brakeTorque` for why no factor of two hides here. */
export interface Caliper {
  readonly kind: 'floating' | 'fixed';
  /** m, diameter of each piston on one side. */
  readonly pistonDiameters: readonly number[];
  /** p_0, Pa, line pressure at which the pads first press. */
  readonly pushOutPressure: number;
  /** η, 1. */
  readonly efficiency: number;
  /** m³/Pa, caliper stretch and seal roll of one caliper. */
  readonly volumeCompliance: number;
  /** kg, unsprung, one caliper without pads. */
  readonly mass: number;
}
