import type { CornerState } from '../heat/corner/corner-state.ts';
import type { FootStop, HeldSlowing } from './schedule-event.ts';
import type { AxleAtStop, ScheduledStop } from './scheduled-stop.ts';

interface Corners {
  readonly front: CornerState;
  readonly rear: CornerState;
}

/** What is noted of one axle while a stop and the wait after it go on. */
class AxleDraft {
  readonly bulkAtStart: number;
  readonly fluidAtStart: number;
  interfacePeak: number;
  padAtEnd: number;
  fluidPeak: number;

  constructor(corner: CornerState) {
    this.bulkAtStart = corner.bulkTemperature();
    this.fluidAtStart = corner.fluidTemperature;
    this.interfacePeak = corner.interfaceTemperature;
    this.padAtEnd = corner.padTemperature();
    this.fluidPeak = corner.fluidTemperature;
  }

  see(corner: CornerState, isBraking: boolean): void {
    this.fluidPeak = Math.max(this.fluidPeak, corner.fluidTemperature);
    if (isBraking) this.interfacePeak = Math.max(this.interfacePeak, corner.interfaceTemperature);
  }

  finished(): AxleAtStop {
    const { bulkAtStart, interfacePeak, padAtEnd, fluidAtStart, fluidPeak } = this;
    return { bulkAtStart, interfacePeak, padAtEnd, fluidAtStart, fluidPeak };
  }
}

/** A stop of a schedule while it is being written; the wait after it belongs to it. */
export class StopDraft {
  first: StopDraft = this;
  cameToRest = true;
  readonly #number: number;
  readonly #startTime: number;
  readonly #event: FootStop | HeldSlowing;
  readonly #front: AxleDraft;
  readonly #rear: AxleDraft;
  #isBraking = true;
  #distance = 0;
  #time = 0;
  #pedalForce = 0;
  #isWithinReach = true;

  constructor(number: number, startTime: number, event: FootStop | HeldSlowing, corners: Corners) {
    this.#number = number;
    this.#startTime = startTime;
    this.#event = event;
    this.#front = new AxleDraft(corners.front);
    this.#rear = new AxleDraft(corners.rear);
  }

  /** Whether it is of the same kind and between the same speeds as an event. */
  isLike(event: FootStop | HeldSlowing): boolean {
    const own = this.#event;
    if (own.kind === 'stop' && event.kind === 'stop')
      return own.from === event.from && own.foot.force === event.foot.force;
    if (own.kind === 'slow' && event.kind === 'slow')
      return own.from === event.from && own.to === event.to && own.deceleration === event.deceleration;
    return false;
  }

  see({ front, rear }: Corners): void {
    this.#front.see(front, this.#isBraking);
    this.#rear.see(rear, this.#isBraking);
  }

  /** Takes the hottest that the faces were, °C. */
  seeFaces(front: number, rear: number): void {
    this.#front.interfacePeak = Math.max(this.#front.interfacePeak, front);
    this.#rear.interfacePeak = Math.max(this.#rear.interfacePeak, rear);
  }

  /** Ends the braking: m, s, N on the pedal. */
  end(
    distance: number,
    time: number,
    pedalForce: number,
    isWithinReach: boolean,
    cameToRest: boolean,
    { front, rear }: Corners,
  ): void {
    this.#isBraking = false;
    this.#distance = distance;
    this.#time = time;
    this.#pedalForce = pedalForce;
    this.#isWithinReach = isWithinReach;
    this.cameToRest = cameToRest;
    this.#front.padAtEnd = front.padTemperature();
    this.#rear.padAtEnd = rear.padTemperature();
  }

  get #to(): number {
    return this.#event.kind === 'slow' ? this.#event.to : 0;
  }

  get #meanDeceleration(): number {
    const { from } = this.#event;
    return (from * from - this.#to * this.#to) / (2 * this.#distance);
  }

  get #shareOfFirst(): number {
    const { first } = this;
    if (this.#event.kind === 'stop') return this.#meanDeceleration / first.#meanDeceleration;
    return this.#pedalForce > 0 ? first.#pedalForce / this.#pedalForce : 1;
  }

  finished(): ScheduledStop {
    return {
      number: this.#number,
      startTime: this.#startTime,
      from: this.#event.from,
      to: this.#to,
      distance: this.#distance,
      time: this.#time,
      meanDeceleration: this.#meanDeceleration,
      pedalForce: this.#pedalForce,
      shareOfFirst: this.#shareOfFirst,
      isWithinReach: this.#isWithinReach,
      cameToRest: this.cameToRest,
      front: this.#front.finished(),
      rear: this.#rear.finished(),
    };
  }
}
