import type { Foot } from '../set-up/foot.ts';

/** One thing that is done with the car, in the order of a schedule. */
export type ScheduleEvent = FootStop | HeldSlowing | Acceleration | Drive | Regain | Descent | Parked;

/** A stop to rest under a foot: how far it goes is what comes out. */
export interface FootStop {
  readonly kind: 'stop';
  /** v_1, m/s. */
  readonly from: number;
  readonly foot: Foot;
}

/** A stop or snub at a deceleration that the driver holds: the pedal force is what comes out. */
export interface HeldSlowing {
  readonly kind: 'slow';
  /** v_1, m/s. */
  readonly from: number;
  /** v_2, m/s; 0 is a stop. */
  readonly to: number;
  /** a, m/s². */
  readonly deceleration: number;
}

/** Getting faster, which takes time and cools. */
export interface Acceleration {
  readonly kind: 'accelerate';
  /** m/s. */
  readonly to: number;
  /** m/s². */
  readonly rate: number;
}

/** Driving on at one speed. */
export interface Drive {
  readonly kind: 'drive';
  /** m/s. */
  readonly speed: number;
  /** s. */
  readonly time: number;
}

/** Getting back to a speed and holding it until the next slowing may begin; whichever end comes first. */
export interface Regain {
  readonly kind: 'regain';
  /** m/s. */
  readonly to: number;
  /** m/s²; where left out the speed is regained evenly over all of the interval. */
  readonly rate?: number;
  /** s from the first touch of the last slowing. */
  readonly interval?: number;
  /** m from there. */
  readonly distance?: number;
  /** °C, rings of the hotter axle, their heat spread evenly. */
  readonly coolTo?: number;
}

/** Downhill at a steady speed. */
export interface Descent {
  readonly kind: 'descent';
  /** Fall over run, 1. */
  readonly grade: number;
  /** m/s. */
  readonly speed: number;
  /** s. */
  readonly time: number;
  /** Share of what grade asks beyond air and rolling that the brakes take, 1; the engine takes the rest. */
  readonly brakeShare: number;
}

/** Standing with the brakes released. */
export interface Parked {
  readonly kind: 'parked';
  /** s. */
  readonly time: number;
}
