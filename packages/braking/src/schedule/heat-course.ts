/** Temperatures of both corners of an axle over a schedule, °C, one value per node of `HeatCourse.time`. */
export interface AxleCourse {
  /** Rotor's rubbing face. */
  readonly interface: Float64Array;
  /** Ring, its heat spread evenly. */
  readonly bulk: Float64Array;
  /** Pad's friction material, mean. */
  readonly pad: Float64Array;
  /** Fluid behind the pistons. */
  readonly fluid: Float64Array;
  /** Caliper's body. */
  readonly body: Float64Array;
  /** Hat. */
  readonly hat: Float64Array;
}

/** A schedule over time; nodes are not evenly spaced. */
export interface HeatCourse {
  /** s from the start. */
  readonly time: Float64Array;
  /** m/s. */
  readonly speed: Float64Array;
  readonly front: AxleCourse;
  readonly rear: AxleCourse;
}

/** The hottest that an axle gets, °C, and when the fluid does, s. */
export interface AxleHighest {
  readonly interface: number;
  readonly bulk: number;
  readonly pad: number;
  readonly fluid: number;
  readonly fluidTime: number;
}

/** What is read of a corner at a node. */
export interface CornerReading {
  /** °C, rotor's rubbing face. */
  readonly interfaceTemperature: number;
  /** °C, fluid behind the pistons. */
  readonly fluidTemperature: number;
  /** °C, caliper's body. */
  readonly bodyTemperature: number;
  /** °C, hat. */
  readonly hatTemperature: number;
  bulkTemperature(): number;
  padTemperature(): number;
}

const columns = 14;

/** Writes nodes of a schedule down in columns that grow by doubling. */
export class CourseRecorder {
  #values = new Float64Array(columns * 256);
  #nodes = 0;

  /** Takes a node down: s, m/s, and both axles. */
  note(time: number, speed: number, front: CornerReading, rear: CornerReading): void {
    if ((this.#nodes + 1) * columns > this.#values.length) this.#grow();
    const at = this.#nodes * columns;
    this.#values[at] = time;
    this.#values[at + 1] = speed;
    this.#read(at + 2, front);
    this.#read(at + 8, rear);
    this.#nodes += 1;
  }

  #grow(): void {
    const values = new Float64Array(2 * this.#values.length);
    values.set(this.#values);
    this.#values = values;
  }

  #read(at: number, corner: CornerReading): void {
    this.#values[at] = corner.interfaceTemperature;
    this.#values[at + 1] = corner.bulkTemperature();
    this.#values[at + 2] = corner.padTemperature();
    this.#values[at + 3] = corner.fluidTemperature;
    this.#values[at + 4] = corner.bodyTemperature;
    this.#values[at + 5] = corner.hatTemperature;
  }

  /** All nodes as columns. */
  course(): HeatCourse {
    const column = (at: number): Float64Array =>
      Float64Array.from({ length: this.#nodes }, (_, node) => this.#values[node * columns + at] ?? NaN);
    const axle = (at: number): AxleCourse => ({
      interface: column(at),
      bulk: column(at + 1),
      pad: column(at + 2),
      fluid: column(at + 3),
      body: column(at + 4),
      hat: column(at + 5),
    });
    return { time: column(0), speed: column(1), front: axle(2), rear: axle(8) };
  }
}
