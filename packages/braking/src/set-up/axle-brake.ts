import type { Caliper } from './caliper.ts';
import type { HeatPath } from './heat-path.ts';
import type { Hose } from './hose.ts';
import type { Pad } from './pad.ts';
import type { Rotor } from './rotor.ts';
import type { Tube } from './tube.ts';

/** The two equal brakes of one axle. Every part is given for ONE corner. */
export interface AxleBrake {
  readonly kind: 'disc';
  readonly caliper: Caliper;
  readonly pad: Pad;
  readonly rotor: Rotor;
  readonly hose: Hose;
  readonly tube: Tube;
  /** m, gap between one pad and the rotor at rest. */
  readonly runningClearance: number;
  /** Where the heat goes from the contact; `usualHeatPath` where left out. */
  readonly heatPath?: HeatPath;
  /** How pressure is taken to spread over the pad: decides the effective radius. */
  readonly pressureAssumption: 'uniform-pressure' | 'uniform-wear';
}
