import type { ControlledDifference, IntervalValue, StopSetComparison } from '@standstill/logs';
import { shown } from './comparison-sentence.ts';

/** The difference that answers the question: controlled where there is a control, else as the two sets lie apart. */
export interface LeadingDifference {
  /** m, after minus before. */
  readonly difference: IntervalValue;
  /** Whether it can be told from nothing. */
  readonly isShown: boolean;
  readonly control: ControlledDifference | null;
}

/** Of two compared sets and what controls them. */
export function leadingDifference(
  compared: StopSetComparison,
  control: ControlledDifference | null,
): LeadingDifference {
  if (control === null) return { difference: compared.difference, isShown: shown(compared), control };
  const { difference } = control;
  return { difference, isShown: difference.low > 0 || difference.high < 0, control };
}
