import type { Channel } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import type { SignalPlan, SignalSource } from './signal-source.ts';

/**
 * Makes a channel of a signal's numbers, in place: what its description says can't be becomes a gap where the signal is
 * used, and what remains becomes SI.
 *
 * @param signal - the signal
 * @param plan - what was decided about it
 * @param values - its numbers as read, gaps as NaN; changed
 * @param issues - where numbers out of its range are counted
 * @returns the channel
 */
export function plannedChannel(
  signal: SignalSource,
  plan: SignalPlan,
  values: Float64Array,
  issues: IssueList,
): Channel {
  const { role, factor, shift } = plan;
  if (role !== 'unknown' && signal.range !== undefined) dropOutside(signal, signal.range, values, issues);
  if (factor !== 1 || shift !== 0)
    for (let row = 0; row < values.length; row += 1) values[row] = values[row]! * factor + shift;
  return {
    name: signal.name,
    quantity: role === 'time' ? 'unknown' : role,
    unitAsRead: plan.unitAsRead,
    unitOrigin: plan.unitOrigin,
    chosenBy: plan.chosenBy,
    values,
  };
}

function dropOutside(
  { name }: SignalSource,
  { least, greatest }: NonNullable<SignalSource['range']>,
  values: Float64Array,
  issues: IssueList,
): void {
  for (let row = 0; row < values.length; row += 1) {
    const value = values[row]!;
    if (!(value < least || value > greatest)) continue;
    values[row] = NaN;
    issues.add(
      'out-of-stated-range',
      null,
      () =>
        `Signal '${name}' leaves the range from ${least} to ${greatest} that its description states; gaps there.`,
      name,
    );
  }
}
