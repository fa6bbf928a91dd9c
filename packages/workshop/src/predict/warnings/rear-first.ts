import type { Antilock } from '@standstill/braking';
import type { Warning } from '../../results/warning.ts';
import type { RearFirstFound } from '../lock-looks.ts';
import { percent } from '../../words/percent.ts';

interface RearFirstInput {
  readonly id: string;
  readonly title: string;
  /** What the car has against locking, all of it taken as failed. */
  readonly antilock: Antilock;
  /** Where the rear locks first with the central values, on any road up to dry grip; null where it never does. */
  readonly found: RearFirstFound | null;
  /** True where it takes pads as cold as the air. */
  readonly coldOnly: boolean;
  /** The same at the temperatures of the repeated stops, and from which stop on; null where it never does. */
  readonly hot: RearFirstHot | null;
  /** 1, share of the draws in which it does at the start temperature. */
  readonly share: number;
  /** 1, the same at the temperatures of the repeated stops; null where there are none. */
  readonly shareHot: number | null;
}

export interface RearFirstHot {
  readonly stop: number;
  readonly of: number;
  readonly range: RearFirstFound;
}

/** Shares of the draws from which an unlikely order is still worth a caution, a word at the top, and a danger (assumed). */
export const rearFirstShares = { caution: 0.02, word: 0.05, danger: 0.25 } as const;

/**
 * A rear axle that locks first turns the car round: said loudly wherever the tires can reach it, cold or hot, with ABS
 * and EBD taken as failed.
 *
 * @param input - set-up; decelerations over g, 1; shares of the draws, 1
 * @returns a danger where the central values or a quarter of the draws show it, a caution where few do, else null
 */
export function rearFirst(input: RearFirstInput): Warning | null {
  const { id, title, found, hot, share, shareHot } = input;
  const failed = withoutHelp(input.antilock);
  const about = { severity: 'danger', about: id } as const;
  if (found !== null)
    return { code: 'rear-locks-first', ...about, message: whenDriven(input, found, failed) };
  if (hot !== null) return { code: 'rear-locks-first-hot', ...about, message: inRow(title, hot, failed) };
  const most = Math.max(share, shareHot ?? 0);
  if (most < rearFirstShares.caution) return null;
  const severity = most >= rearFirstShares.danger ? 'danger' : 'caution';
  const shares = `in ${percent(share)} of what the spreads allow${hotShare(share, shareHot)}`;
  const message =
    `${title}: the rear wheels may lock before the front ones${failed} (${shares}). ` +
    (severity === 'danger'
      ? 'Do not drive it hard before what decides it is measured: pad friction, load shares, valve.'
      : 'Measure what decides it: pad friction, load shares, valve.');
  return { code: 'rear-may-lock-first', severity, about: id, message };
}

function hotShare(share: number, shareHot: number | null): string {
  if (shareHot === null || shareHot - share < 0.01) return '';
  return `, in ${percent(shareHot)} with the pads as hot as the repeated stops make them`;
}

const spins = 'A car whose rear wheels lock first spins. Do not drive it like this:';

function whenDriven({ title, coldOnly }: RearFirstInput, found: RearFirstFound, failed: string): string {
  const pads = coldOnly ? ' with cold pads' : '';
  return (
    `${title}: the REAR wheels lock first ${where(found)}${pads}${failed}. ${spins} ` +
    'change the rear brakes, the valve or the front brakes until the front locks first.'
  );
}

function inRow(title: string, { stop, of, range }: RearFirstHot, failed: string): string {
  return (
    `${title}: from stop ${stop} of ${of} on the pads are so hot that the REAR wheels lock first ${where(range)}${failed}. ` +
    `${spins} the front brakes fade before the rear ones; change pads, rotors or the valve until the front locks first hot as well.`
  );
}

/** No words of what the car does not have. */
function withoutHelp(antilock: Antilock): string {
  if (antilock.kind === 'threshold')
    return antilock.electronicRearLimit ? ' with ABS and EBD failed' : ' with ABS failed';
  return antilock.electronicRearLimit ? ' with EBD failed' : '';
}

function where({ lowest, highest, states, byDriveAlone }: RearFirstFound): string {
  const [low, high] = [lowest.toFixed(2), highest.toFixed(2)];
  const range = low === high ? `at ${low} g` : `from ${low} to ${high} g`;
  const drive = byDriveAlone ? ', while the drive regenerates or creeps' : '';
  return `${range}, ${states.length > 1 ? 'as tested and laden' : stateWords[states[0] ?? 'as-tested']}${drive}`;
}

const stateWords = { 'as-tested': 'as tested', laden: 'laden' } as const;
