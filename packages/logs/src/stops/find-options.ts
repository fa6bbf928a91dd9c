import type { UnitSystem } from '@standstill/units';

/** °C, both ends count. */
export interface TemperatureWindow {
  readonly low: number;
  readonly high: number;
}

/** One standard deviation of a sensor's errors, as its maker states it or a person measured it. */
export interface SensorNoise {
  /** m/s. */
  readonly speed?: number;
  /** m/s². */
  readonly acceleration?: number;
  /** m. */
  readonly position?: number;
}

/** What a person may say about how stops are to be found and judged; every field may be left out. */
export interface FindOptions {
  /** m/s, the speed that stops are meant from; distances are corrected to it and the speed gate stands at it. */
  readonly nominalSpeed?: number;
  /** m/s; slower entries are no stops. 25 km/h where absent. */
  readonly minimumEntrySpeed?: number;
  /** m/s², mean over the distance; what slows less is no stop but rolling out. 0.8 where absent. */
  readonly minimumDeceleration?: number;
  /** m/s²; a stop with a smaller mean is found but left out of sets as a traffic stop. 3 where absent. */
  readonly gentleBelow?: number;
  /** Rise over run in the direction of travel, uphill positive; corrected distances are then for level ground. */
  readonly grade?: number;
  /** s, how late the logged speed is against the brake signal, and its standard error. 0 ± 0.05 s (assumed) where absent. */
  readonly speedLatency?: { readonly value: number; readonly standardError: number };
  /** 'deceleration-onset' leaves brake signals aside. A brake signal is used where the log has one, else. */
  readonly startBy?: 'any' | 'deceleration-onset';
  /** °C, between which the brakes are to be when a stop begins; a stop outside is left out. Not judged where absent. */
  readonly startTemperature?: TemperatureWindow;
  /** Noise of the sensors where it is known; estimated from the log where absent. */
  readonly sensorNoise?: SensorNoise;
  /** Name of the speed channel to use; the one with the most real samples where absent. */
  readonly speedChannel?: string;
  /** Units of the sentences; metric where absent. */
  readonly units?: UnitSystem;
}

/** The options with every field filled. */
export interface FilledOptions {
  readonly nominalSpeed: number | null;
  readonly minimumEntrySpeed: number;
  readonly minimumDeceleration: number;
  readonly gentleBelow: number;
  readonly grade: number;
  readonly speedLatency: { readonly value: number; readonly standardError: number };
  readonly startBy: 'any' | 'deceleration-onset';
  readonly startTemperature: TemperatureWindow | null;
  readonly sensorNoise: SensorNoise;
  readonly speedChannel: string | null;
  readonly units: UnitSystem;
}
