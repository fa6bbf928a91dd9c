/** Power assist between pedal rod and master cylinder. */
export type Booster = NoBooster | VacuumBooster | HydraulicBooster;

export interface NoBooster {
  readonly kind: 'none';
}

/** Jump-in, then `gain`, until the diaphragm force is used up; after that one for one with the input rod. */
export interface VacuumBooster {
  readonly kind: 'vacuum';
  /** Output over input force between jump-in and run-out, 1. */
  readonly gain: number;
  /** N, output force that appears as soon as the valve opens. */
  readonly jumpInForce: number;
  /** m², effective diaphragm area (all diaphragms together). */
  readonly diaphragmArea: number;
  /** Pa below ambient, vacuum available (falls with altitude and engine state). */
  readonly vacuum: number;
  /** 1, share of diaphragm area times vacuum that reaches the rod. */
  readonly efficiency: number;
}

/** `gain` up to an assist force, then one for one. */
export interface HydraulicBooster {
  readonly kind: 'hydraulic';
  readonly gain: number;
  /** N, greatest assist force added to the input rod force. */
  readonly greatestAssist: number;
}
