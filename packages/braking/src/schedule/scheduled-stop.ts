/** Temperatures of an axle at one stop or snub of a schedule, °C. */
export interface AxleAtStop {
  /** Ring at the first touch, its heat spread evenly. */
  readonly bulkAtStart: number;
  /** Hottest of the rubbing face. */
  readonly interfacePeak: number;
  /** Mean of the pad at the end. */
  readonly padAtEnd: number;
  /** Fluid at the first touch. */
  readonly fluidAtStart: number;
  /** Hottest fluid from the first touch to the next slowing, or to the end of the schedule. */
  readonly fluidPeak: number;
}

/** One stop or snub of a schedule. */
export interface ScheduledStop {
  /** 1 for the first. */
  readonly number: number;
  /** s from the start of the schedule to the first touch. */
  readonly startTime: number;
  /** m/s. */
  readonly from: number;
  /** m/s. */
  readonly to: number;
  /** m; Infinity where the car does not come to rest. */
  readonly distance: number;
  /** s. */
  readonly time: number;
  /** m/s², (v_1² − v_2²) / (2 distance). */
  readonly meanDeceleration: number;
  /** N at the pedal: the foot's, or the greatest that the held deceleration asked for. */
  readonly pedalForce: number;
  /**
   * 1, of the first alike (same kind and speeds): its mean deceleration under the foot, or the first's pedal force over
   * this one's where the deceleration is held. Below 1 the brakes have faded.
   */
  readonly shareOfFirst: number;
  /** False where a held deceleration asked more than the tires, or more than 1000 N on the pedal, could give. */
  readonly isWithinReach: boolean;
  readonly cameToRest: boolean;
  readonly front: AxleAtStop;
  readonly rear: AxleAtStop;
}
