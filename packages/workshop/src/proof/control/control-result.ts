import type { ControlledDifference } from '@standstill/logs';
import type { Comparison } from '../../results/log-report.ts';
import { plural } from '../../words/plural.ts';
import { signedRange } from '../../words/signed-range.ts';
import type { Speaker } from '../../words/speaker.ts';

/** A control as published, with how far things moved without the change and what is left of it in one sentence. */
export function controlResult(
  controlled: ControlledDifference,
  say: Speaker,
): NonNullable<Comparison['control']> {
  const { kind, drift, difference } = controlled;
  const sentence = controlWords(controlled, say);
  return {
    kind,
    count: controlCount(controlled),
    drift_m: { ...drift },
    difference_m: { ...difference },
    sentence,
  };
}

function controlWords(controlled: ControlledDifference, say: Speaker): string {
  const { kind, drift, difference } = controlled;
  const count = plural(controlCount(controlled), 'stop');
  const moved = signedRange(drift, 'stopping-distance', say);
  const left = signedRange(difference, 'stopping-distance', say);
  return kind === 'repeat'
    ? `Driven once more (${count}), the old set-up stopped ${moved} than before; with that taken out the new one stops ${left}.`
    : `The reference car, which nobody changed, stopped ${moved} after than before (${count}); with that taken out the changed car stops ${left}.`;
}

/** Stops that count in the sets of the control. */
export function controlCount({ control }: ControlledDifference): number {
  return control.reduce((sum, { distances }) => sum + distances.length, 0);
}
