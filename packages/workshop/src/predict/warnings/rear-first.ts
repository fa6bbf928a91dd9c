import type { RearFirstDecelerations } from '@standstill/braking';
import type { Warning } from '../../results/warning.ts';

interface RearFirstInput {
  readonly id: string;
  readonly title: string;
  /** Where the rear locks first with the central values, on any road up to dry grip; null where it never does. */
  readonly found: RearFirstDecelerations | null;
  /** 1, share of the draws in which it does. */
  readonly share: number;
}

/** Share of the draws from which an unlikely order is still worth a caution (assumed). */
const worthSaying = 0.02;

/**
 * A rear axle that locks first turns the car round: said loudly wherever the tires can reach it, with ABS and EBD taken
 * as failed.
 *
 * @param input - set-up; decelerations over g, 1; share of the draws, 1
 * @returns a danger where the central values show it, a caution where only some draws do, else null
 */
export function rearFirst({ id, title, found, share }: RearFirstInput): Warning | null {
  if (found !== null)
    return { code: 'rear-locks-first', severity: 'danger', about: id, message: danger(title, found) };
  if (share < worthSaying) return null;
  const message =
    `${title}: the rear wheels may lock before the front ones with ABS and EBD failed ` +
    `(in ${Math.round(100 * share)} % of what the spreads allow). Measure what decides it: pad friction, load shares, valve.`;
  return { code: 'rear-may-lock-first', severity: 'caution', about: id, message };
}

function danger(title: string, { lowest, highest }: RearFirstDecelerations): string {
  const [low, high] = [lowest.toFixed(2), highest.toFixed(2)];
  const where = low === high ? `at ${low} g` : `from ${low} to ${high} g`;
  return (
    `${title}: the REAR wheels lock first ${where} with ABS and EBD failed. A car whose rear wheels lock first spins. ` +
    'Do not drive it like this: change the rear brakes, the valve or the front brakes until the front locks first.'
  );
}
