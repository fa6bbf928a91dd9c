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
  /** t_f, m, between the middles of the front tires. */
  readonly frontTrack: number;
  /** t_r, m, between the middles of the rear tires. */
  readonly rearTrack: number;
  /** f_θ, Hz, undamped pitch of the body on its springs. */
  readonly pitchFrequency: number;
  /** ζ, damping over critical damping of that pitch, 1. */
  readonly pitchDamping: number;
  /** J_d, kg m² at the driven wheels, all together, of what turns with them: gearbox and engine where the clutch stays in. */
  readonly drivelineInertia: number;
  /** N m at the driven wheels, all together, by which the engine holds back; 0 with the clutch out. */
  readonly engineDrag: number;
  /** Share of driveline and engine drag on the front axle, 1: 1 front drive, 0 rear drive. */
  readonly frontDriveShare: number;
}
