/** One point of the picture of the balance; forces over weight, so that every figure is without unit. */
export interface BalancePoint {
  /** z, deceleration over g, 1. */
  readonly deceleration: number;
  /** T_1 / P, 1. */
  readonly frontForce: number;
  /** T_2 / P, 1. */
  readonly rearForce: number;
  /** f_1, 1. */
  readonly frontAdhesion: number;
  /** f_2, 1. */
  readonly rearAdhesion: number;
}
