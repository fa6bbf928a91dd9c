import { signedRange, type Estimate, type Reconciliation, type Speaker } from '@standstill/workshop';
import { estimateWords } from '../look/estimate-words.ts';
import type { MarkLook } from '../road/mark-shape.ts';

/** A place of rest with its interval, m along the road, and what it is. */
export interface ExpectationRow {
  readonly title: string;
  readonly figure: string;
  readonly place: Estimate;
  readonly look: MarkLook;
}

/** m, where the stops before ended on average; 0 where that is not told. */
export function placeBefore({ observations }: Reconciliation): Estimate | null {
  return (
    observations.find(({ set, quantity }) => set === 'before' && quantity === 'stopping-distance')
      ?.measured ?? null
  );
}

/** The stops before, and where the job alone, the job after learning and the measurement put those after. */
export function expectationRows(result: Reconciliation, say: Speaker): readonly ExpectationRow[] {
  const before = placeBefore(result);
  const measuredBefore =
    before === null ? [] : [placed('Measured before', before, say, { shape: 'dot', filled: false })];
  if (result.change === null) return [...measuredBefore, ...ofBefore(result, say)];
  const base = before?.value ?? 0;
  const { byJob_m, expected_m, measured_m } = result.change;
  const row = (title: string, change: Estimate, look: MarkLook): ExpectationRow => ({
    title,
    figure: signedRange(change, 'stopping-distance', say),
    place: { value: base + change.value, low: base + change.low, high: base + change.high },
    look,
  });
  return [
    ...measuredBefore,
    row('After, expected by the job', byJob_m, { shape: 'square', filled: false }),
    row('After, expected once the stops before are learned from', expected_m, {
      shape: 'diamond',
      filled: false,
    }),
    ...(measured_m === null ? [] : [row('After, measured', measured_m, { shape: 'dot', filled: true })]),
  ];
}

/** Without stops after: the same stops before by the job alone and after learning. */
function ofBefore({ observations }: Reconciliation, say: Speaker): readonly ExpectationRow[] {
  const found = observations.find(
    ({ set, quantity }) => set === 'before' && quantity === 'stopping-distance',
  );
  if (found === undefined) return [];
  return [
    placed('Before, expected by the job', found.byJob, say, { shape: 'square', filled: false }),
    placed('Before, once learned from', found.learned, say, { shape: 'diamond', filled: false }),
  ];
}

function placed(title: string, place: Estimate, say: Speaker, look: MarkLook): ExpectationRow {
  return { title, figure: estimateWords(place, 'stopping-distance', say), place, look };
}
