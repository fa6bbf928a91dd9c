import type { AxleHighest, CornerReading } from './heat-course.ts';

/** °C, the hottest of one axle so far. */
class AxleReadings {
  interface = -Infinity;
  bulk = -Infinity;
  pad = -Infinity;
  fluid = -Infinity;
  fluidTime = 0;

  see(time: number, corner: CornerReading): void {
    this.interface = Math.max(this.interface, corner.interfaceTemperature);
    if (corner.fluidTemperature <= this.fluid) return;
    this.fluid = corner.fluidTemperature;
    this.fluidTime = time;
  }

  /** Looks at what moves slowly. */
  seeMeans(corner: CornerReading): void {
    this.bulk = Math.max(this.bulk, corner.bulkTemperature());
    this.pad = Math.max(this.pad, corner.padTemperature());
  }

  clear(): void {
    this.interface = -Infinity;
    this.bulk = -Infinity;
    this.pad = -Infinity;
    this.fluid = -Infinity;
    this.fluidTime = 0;
  }

  read(): AxleHighest {
    const { bulk, pad, fluid, fluidTime } = this;
    return { interface: this.interface, bulk, pad, fluid, fluidTime };
  }
}

/** The hottest that both axles have been. */
export class HighestReadings {
  readonly #front = new AxleReadings();
  readonly #rear = new AxleReadings();

  clear(): void {
    this.#front.clear();
    this.#rear.clear();
  }

  /** Looks at both axles at a time, s. */
  see(time: number, front: CornerReading, rear: CornerReading): void {
    this.#front.see(time, front);
    this.#rear.see(time, rear);
  }

  /** Takes the hottest that the faces were in a stop, °C. */
  seeFaces(front: number, rear: number): void {
    this.#front.interface = Math.max(this.#front.interface, front);
    this.#rear.interface = Math.max(this.#rear.interface, rear);
  }

  /** Looks at rings and pads; at the end of every event and every step of cooling is enough. */
  seeMeans(front: CornerReading, rear: CornerReading): void {
    this.#front.seeMeans(front);
    this.#rear.seeMeans(rear);
  }

  get front(): AxleHighest {
    return this.#front.read();
  }

  get rear(): AxleHighest {
    return this.#rear.read();
  }
}
