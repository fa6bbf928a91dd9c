import type { ChannelQuantity } from '../channels/channel-table.ts';

/** Why a stop is doubted or left out of a set. */
export interface StopFlag {
  readonly code:
    | 'speed-off-nominal'
    | 'sample-gap'
    | 'poor-fix'
    | 'not-straight'
    | 'not-to-rest'
    | 'low-rate'
    | 'held-values'
    | 'wheels-disagree'
    | 'gentle'
    | 'impossible-deceleration'
    | 'scale-assumed'
    | 'start-temperature';
  /** `excludes` keeps the stop out of every set; `warns` leaves it in and says so. */
  readonly severity: 'excludes' | 'warns';
  readonly reason: string;
}

/** What a temperature channel read at a stop. */
export interface StopTemperature {
  readonly channel: string;
  readonly start: number;
  readonly end: number | null;
}

/** A stop as smoothed. */
export interface StopTrace {
  readonly time: Float64Array;
  readonly speed: Float64Array;
  readonly speedStandardError: Float64Array;
  readonly deceleration: Float64Array;
}

/** A sensor of the log as the smoother saw it. */
export interface UsedSensor {
  readonly channel: string;
  readonly quantity: ChannelQuantity;
  readonly used: boolean;
  /** Why it was not used, or what was done with it. */
  readonly note: string;
  /** One standard deviation of its errors, SI units of the quantity; null where it was not used. */
  readonly noise: number | null;
  readonly noiseOrigin: 'estimated' | 'given' | 'assumed' | null;
  /** SI units of the quantity, added to what it reads; null where there is none. */
  readonly bias: number | null;
  /** rad, mounting tilt or grade that the bias amounts to; null but for accelerometers. */
  readonly tilt: number | null;
  /** True value over reading; null but for wheel speeds. */
  readonly scale: number | null;
}

/**
 * One stop found in a log. Two definitions of distance stand side by side and are never mixed:
 * `applicationDistance` runs from the first brake application (switch, pressure, pedal; else back-extrapolated onset)
 * to rest; `gateDistance` runs from the speed gate (crossing the nominal speed downward) to rest.
 */
export interface FoundStop {
  /** 1-based in the order of the log. */
  readonly number: number;
  /** s on the table's time base. */
  readonly startTime: number;
  readonly endTime: number;
  /** Time of day or ISO time of the start where the source gives one. */
  readonly clock: string | null;
  readonly startBy: 'brake-switch' | 'brake-pressure' | 'pedal' | 'deceleration-onset';
  /** m/s at the start. */
  readonly entrySpeed: number;
  /** m, as driven, start to rest; the end extrapolated to rest. */
  readonly applicationDistance: number;
  /** m, standard error of `applicationDistance` from sampling and sensor resolution. */
  readonly distanceStandardError: number;
  /**
   * s, standard error of the delay between brake signal and speed. It is part of `distanceStandardError`, and one and
   * the same for all stops of a logger; 0 where the speed itself tells the start.
   */
  readonly startDelayError: number;
  /** m, from the nominal speed to rest; null where the stop never crossed it or no nominal speed is given. */
  readonly gateDistance: number | null;
  /** m, application distance corrected to the nominal speed by the squared ratio; null without one. */
  readonly correctedDistance: number | null;
  /** s, start to rest. */
  readonly duration: number;
  /** m/s², v0²/(2 d). */
  readonly meanDecelerationByDistance: number;
  /** m/s², v0/T. */
  readonly meanDecelerationByTime: number;
  /** m/s², mean fully developed deceleration between 0.8 and 0.1 of the entry speed; null where not crossed. */
  readonly meanFullyDevelopedDeceleration: number | null;
  /** m/s², greatest over any 0.2 s or two samples, whichever is longer. */
  readonly peakDeceleration: number;
  /** s, from the start to 90 % of the fully developed deceleration; null where the rate does not show it. */
  readonly buildUpTime: number | null;
  /** Hz, real rate at which the speed changed or was sampled, not the row rate. */
  readonly sampleRate: number;
  readonly flags: readonly StopFlag[];
  /** °C by channel, at the start and at rest (`end`; null where the channel has no value near it). */
  readonly temperatures: readonly StopTemperature[];
  /** Pa, mean over the fully developed part (0.8 to 0.1 of the entry speed); null where it is not recorded. */
  readonly developedPressure: number | null;
  /** N, likewise. */
  readonly developedPedalForce: number | null;
  /** rad from north, direction of travel at the start; null where it is not recorded. */
  readonly heading: number | null;
  /**
   * Trace of the stop for drawing, from 1 s before the start: s, m/s, m/s (one standard error of the speed) and m/s²
   * (positive when slowing).
   */
  readonly trace: StopTrace;
}
