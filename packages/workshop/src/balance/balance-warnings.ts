import { rowOf } from '../predict/evaluate.ts';
import type { LoadState } from '../predict/load-state.ts';
import { coldPads, rearFirstRange, startPads } from '../predict/lock-looks.ts';
import { rearFirstHot } from '../predict/rear-first-hot.ts';
import { antilockChange } from '../predict/warnings/antilock-change.ts';
import { rearFirst } from '../predict/warnings/rear-first.ts';
import type { JobSetUp } from '../job/job.ts';
import type { SetUpBalance } from '../results/balance-report.ts';
import type { Warning } from '../results/warning.ts';
import type { Settled } from '../settle/settle.ts';

/** One set-up on its way through the report. */
export interface BalanceCase {
  readonly setUp: JobSetUp;
  /** With the central values. */
  readonly settled: Settled;
  readonly result: SetUpBalance;
}

interface CaseWarningsInput {
  readonly one: BalanceCase;
  readonly states: readonly LoadState[];
  /** Of repeated stops. */
  readonly count: number;
}

/** What is dangerous about one set-up by itself. */
export function caseWarnings({ one, states, count }: CaseWarningsInput): Warning[] {
  const { setUp, settled, result } = one;
  const { id, title } = setUp;
  const warm = rearFirstRange(settled, startPads(settled), states);
  const shares = result.states.map(({ rearFirst: { share } }) => share);
  const hotShares = result.states.flatMap(({ rearFirst: { shareHot } }) =>
    shareHot === null ? [] : [shareHot],
  );
  const order = rearFirst({
    id,
    title,
    antilock: settled.setUp.antilock,
    found: warm ?? rearFirstRange(settled, coldPads(settled), states),
    coldOnly: warm === null,
    hot: rearFirstHot(settled, rowOf(settled, count), states),
    share: Math.max(...shares),
    shareHot: hotShares.length === 0 ? null : Math.max(...hotShares),
  });
  return [...(order === null ? [] : [order]), ...parkingWarnings(one), ...driveNotes(one)];
}

function parkingWarnings({ setUp: { id, title }, result }: BalanceCase): Warning[] {
  const weak = result.states.find(({ parking }) => parking !== null && !parking.holdsTwentyPercent);
  if (weak === undefined) return [];
  const message = `${title}: the parking brake does not hold the 20 % grade of FMVSS 135 with the figures known; measure its pull and try it on a slope before the car is left on one.`;
  return [{ code: 'parking-weak', severity: 'caution', about: id, message }];
}

function driveNotes({ setUp: { id, title }, settled: { regeneration, creep } }: BalanceCase): Warning[] {
  if (regeneration === 0 && creep === 0) return [];
  const message = `${title}: what the drive does is taken on top of the brakes at the driven wheels, and as absent; the worse of the two counts. A control that blends the two is not modeled.`;
  return [{ code: 'drive-by-share', severity: 'caution', about: id, message }];
}

/** What a set-up changes against the first that somebody must look at. */
export function changeWarnings(first: BalanceCase, other: BalanceCase): Warning[] {
  const { id, title } = other.setUp;
  const antilock = antilockChange(id, title, first.settled, other.settled);
  return [...(antilock === null ? [] : [antilock]), ...parkingUnknown(first, other)];
}

const rearSlots = ['rearCaliper', 'rearPad', 'rearRotor', 'rearDrum'] as const;

/** A rear brake that is changed while nobody knows what holds the parked car. */
function parkingUnknown(first: BalanceCase, other: BalanceCase): Warning[] {
  const { id, title, slots } = other.setUp;
  const isChanged = rearSlots.some((slot) => slots[slot] !== first.setUp.slots[slot]);
  if (!isChanged || slots.parkingBrake !== null) return [];
  const message = `${title}: the rear brakes change and it is not known what holds the parked car then. State the parking brake, or try it on a slope before the car is left on one.`;
  return [{ code: 'parking-unknown', severity: 'caution', about: id, message }];
}
