/** What a foot can do and a law asks of it: yardsticks for pedals, no property of one driver. */
export interface DriverLimits {
  /** N, least and greatest pedal force of the US brake tests. */
  readonly lawfulForce: { readonly low: number; readonly high: number };
  /** N, what a weak driver gives in one push, as a band. */
  readonly weakDriverForce: { readonly low: number; readonly high: number };
  /** m, travel that a foot control should have. */
  readonly pedalTravel: { readonly low: number; readonly high: number };
  /** s, mean time of the foot from accelerator to brake. */
  readonly footMovement: { readonly women: number; readonly men: number };
}

/**
 * Published limits of feet: 500 N at most in the brake tests (read; 65 N at least from memory), 70 to 100 lbf from a weak
 * driver (from memory), 25 to 180 mm of travel (from memory), foot movement of 0.28 s and 0.22 s (read).
 *
 * Source: [fmvss-135], [mortimer-1974], [mil-std-1472], [foot-movement-1994]
 */
export const driverLimits: DriverLimits = {
  lawfulForce: { low: 65, high: 500 },
  weakDriverForce: { low: 311, high: 445 },
  pedalTravel: { low: 0.025, high: 0.18 },
  footMovement: { women: 0.28, men: 0.22 },
};
