import type { FootInput, FullStopInput } from '@standstill/braking';
import { stopInputOf } from '../predict/evaluate.ts';
import type { Settled } from '../settle/settle.ts';

/** How the foot presses in a simulated stop; all left out, as the job says. */
export interface SimulatedFoot {
  /** m/s²: the foot seeks this deceleration instead. */
  readonly deceleration?: number | undefined;
  /** True for a foot that stays down where there is no antilock, so that wheels lock and slide. */
  readonly lockedWheels?: boolean | undefined;
}

/**
 * The full stop that a settled set-up is asked for, with no more force than the pedal has travel for.
 *
 * @param settled - set-up, road and foot of the job
 * @param asked - what the foot does instead
 * @returns the input of `fullStop`
 */
export function fullInput(settled: Settled, { deceleration, lockedWheels }: SimulatedFoot): FullStopInput {
  const { setUp, road, foot, speed, rotorTemperatures } = stopInputOf(settled);
  const pressing: FootInput =
    deceleration === undefined
      ? { kind: 'ramp', ...foot }
      : {
          kind: 'deceleration',
          deceleration,
          rampTime: foot.rampTime,
          greatestForce: Math.max(1, foot.force),
        };
  return {
    setUp,
    road,
    foot: pressing,
    speed,
    ...(rotorTemperatures === undefined ? {} : { rotorTemperatures }),
    lockedWheels: lockedWheels === true,
  };
}
