/** The car without its brakes and tires, at test mass (car, people, fuel). */
export interface Car {
  /** m, kg. */
  readonly mass: number;
  /** L, m. */
  readonly wheelbase: number;
  /** h, m above the road. */
  readonly centerOfGravityHeight: number;
  /** ψ, static front axle load over weight, 1. */
  readonly frontLoadShare: number;
  /** Static left-hand load over weight, 1. */
  readonly leftLoadShare: number;
  /** C_d A, m². */
  readonly dragArea: number;
  /** C_Lf A, m², positive lifts. */
  readonly frontLiftArea: number;
  /** C_Lr A, m², positive lifts. */
  readonly rearLiftArea: number;
  /** f_r, rolling resistance over load, 1. */
  readonly rollingResistance: number;
  /** J_f, kg m², ONE front wheel with tire and rotor. */
  readonly frontWheelInertia: number;
  /** J_r, kg m², ONE rear wheel with tire and rotor. */
  readonly rearWheelInertia: number;
}
