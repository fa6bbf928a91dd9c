import type { BalanceDifference, SetUpBalance } from '../results/balance-report.ts';
import type { Estimate } from '../results/estimate.ts';
import type { Warning } from '../results/warning.ts';
import { percent } from '../words/percent.ts';
import { subjectOf } from '../words/subject-of.ts';
import { stateWords } from './lock-words.ts';

interface VerdictInput {
  readonly reference: SetUpBalance;
  readonly changed: SetUpBalance;
  readonly states: BalanceDifference['states'];
  readonly dangers: readonly Warning[];
}

/** Share of force, 1, under which nobody would notice (assumed). */
const trifle = 0.005;

/** What a set-up does to the balance: dangers first, then share of force and match of front and rear. */
export function balanceVerdict({ reference, changed, states, dangers }: VerdictInput): string {
  const { name, verb } = subjectOf(changed.title, false);
  const danger = dangers.length > 0 ? 'DANGER: do not drive it like this. ' : '';
  const moved = states.filter(({ frontForceShare: { low, high } }) => low < -trifle || high > trifle);
  if (moved.length === 0) return `${danger}${name} ${verb('leave', 'leaves')} the balance as it is.`;
  const words = states.flatMap(({ state, frontForceShare, efficiencyAtLock }) => {
    const before = reference.states.find((one) => one.state === state);
    const after = changed.states.find((one) => one.state === state);
    if (before === undefined || after === undefined) return [];
    const shares = `from ${percent(before.frontForceShare.value)} to ${percent(after.frontForceShare.value)} ${stateWords[state]}`;
    return [`${shares} (${points(frontForceShare)}${matchWords(efficiencyAtLock)})`];
  });
  return `${danger}${name} ${verb('move', 'moves')} the share of brake force at the front when the first axle locks ${words.join(' and ')}.`;
}

/** `+2 to +5 points`. */
function points({ low, high }: Estimate): string {
  return `${signed(low)} to ${signed(high)} points`;
}

function signed(share: number): string {
  return `${share < 0 ? '−' : '+'}${Math.round(Math.abs(100 * share))}`;
}

function matchWords(efficiency: Estimate | null): string {
  if (efficiency === null) return '';
  if (efficiency.high < -trifle) return ', front and rear match less well';
  return efficiency.low > trifle ? ', front and rear match better' : '';
}
