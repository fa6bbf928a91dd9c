import { axleVolumes, brakeTorque, padFriction } from '@standstill/braking';
import type { AxleBrake, SetUp } from '@standstill/braking';
import type { Warning } from '../../results/warning.ts';
import { listOf } from '../../words/list-of.ts';
import type { Settled } from '../../settle/settle.ts';

/** Beyond this change a control calibrated to the parts as built is worth a question to its maker (assumed). */
const marked = 0.1;
/** Pa, where torque and volume are compared. */
const pressure = 7e6;

interface CalibrationChange {
  readonly title: string;
  /** New over old, less 1. */
  readonly change: number;
}

/**
 * ABS, EBD and stability control are calibrated to the brakes as built: says what of that calibration a set-up changes.
 *
 * @param id - of the set-up that changes something
 * @param title - of the same
 * @param reference - what the control is taken to be calibrated to: the car as found
 * @param changed - the set-up
 * @returns one warning with every change, a caution where one is beyond ±10 % (assumed); null without such a control
 */
export function antilockChange(
  id: string,
  title: string,
  reference: Settled,
  changed: Settled,
): Warning | null {
  if (!hasControl(reference.setUp) && !hasControl(changed.setUp)) return null;
  const changes = calibrationChanges(reference, changed);
  const beyond = changes.filter(({ change }) => Math.abs(change) > marked);
  const moved = changes.filter(({ change }) => Math.abs(change) >= 0.005);
  if (moved.length === 0) return null;
  const listed = listOf(moved.map(({ title: what, change }) => `${what} ${percent(change)}`));
  const mark =
    beyond.length === 0
      ? 'all within ±10 % (assumed limit)'
      : `beyond ±10 % (assumed limit): ${listOf(beyond.map(({ title: what }) => what))}`;
  return {
    code: 'antilock-calibration',
    severity: beyond.length > 0 ? 'caution' : 'note',
    about: id,
    message:
      `${title}: ABS, EBD and stability control were calibrated to other figures: ${listed}; ${mark}. ` +
      'Nothing here says that they still work as approved: check on low grip, on a closed course, before the car goes back on the road.',
  };
}

function hasControl({ antilock }: SetUp): boolean {
  return antilock.kind !== 'none' || antilock.electronicRearLimit;
}

function calibrationChanges(reference: Settled, changed: Settled): CalibrationChange[] {
  const before = reference.setUp;
  const after = changed.setUp;
  const temperature = reference.startTemperature;
  return [
    ratio(
      'front torque per pressure',
      torque(before.frontBrake, temperature),
      torque(after.frontBrake, temperature),
    ),
    ratio(
      'rear torque per pressure',
      torque(before.rearBrake, temperature),
      torque(after.rearBrake, temperature),
    ),
    ratio('front fluid volume', volume(before.frontBrake, before), volume(after.frontBrake, after)),
    ratio('rear fluid volume', volume(before.rearBrake, before), volume(after.rearBrake, after)),
    ratio('front rolling radius', before.frontTire.rollingRadius, after.frontTire.rollingRadius),
    ratio('rear rolling radius', before.rearTire.rollingRadius, after.rearTire.rollingRadius),
  ];
}

function ratio(title: string, before: number, after: number): CalibrationChange {
  return { title, change: after / before - 1 };
}

function torque(brake: AxleBrake, temperature: number): number {
  return brakeTorque({ brake, pressure, friction: padFriction({ pad: brake.pad, temperature }) });
}

function volume(brake: AxleBrake, { fluid }: SetUp): number {
  // Trapped air is a fault, not what the control was calibrated to.
  return axleVolumes({ brake, fluid: { ...fluid, trappedAir: 0 }, pressure }).total;
}

function percent(change: number): string {
  const rounded = Math.round(100 * change);
  return `${rounded < 0 ? '−' : '+'}${Math.abs(rounded)} %`;
}
