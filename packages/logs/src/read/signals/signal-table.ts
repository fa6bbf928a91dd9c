import type { Channel, ChannelTable, SourceClock } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import { quotedList, refuseLog } from '../log-refusal.ts';
import { withSpeedFromPositions } from '../positions/with-speed-from-positions.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { isoText } from '../time/clock-text.ts';
import { reportSeams } from '../time/report-seams.ts';
import type { EventStore } from './event-store.ts';
import { planSignals } from './plan-signals.ts';
import { plannedChannel } from './planned-channel.ts';
import type { SignalPlan, SignalSource } from './signal-source.ts';

/** A signal and where its values are kept. */
export interface StoredSignal {
  readonly signal: SignalSource;
  readonly group: number;
  readonly column: number;
}

export interface SignalLog {
  readonly format: string;
  readonly bytes: number;
  readonly store: EventStore;
  readonly signals: readonly StoredSignal[];
  /** What the log's clock counts from; null where it only counts seconds. */
  readonly clock: SourceClock['kind'] | null;
  /** The names in one line, by which remembered choices are found again. */
  readonly headings: string;
  readonly issues: IssueList;
}

/** Values in all channels together that are worth their memory (8 bytes each); beyond, unused channels are left out. */
const mostValues = 32_000_000;
/** More lines than this share before the line before are no late ones: the times are no moments. */
const mostBackward = 0.25;

/**
 * Makes the channel table of a log of named signals that come each in its own time: one time base of all moments, gaps
 * between, nothing resampled.
 *
 * @param log - the signals and their values
 * @param options - name and a person's word
 * @returns the table, or why the log can't be used
 */
export function signalTable(log: SignalLog, options: ReadOptions): ReadOutcome {
  const { store, issues } = log;
  const { name } = options;
  if (log.signals.length === 0) return refuseLog('log-no-rows', name, 'holds no value that could be read.');
  if (store.backwardShare() > mostBackward)
    return refuseLog(
      'log-no-time',
      name,
      'has times that go back and forth from line to line, as steps do that are no moments; log with absolute times.',
    );
  const planned = planSignals(
    log.signals.map(({ signal }) => signal),
    options,
    issues,
  );
  if (!planned.ok) return planned;
  const kept = affordable(log, planned.plans);
  const events = store.finish([...new Set(kept.map(({ stored }) => stored.group))]);
  const rows = events.time.time.length;
  if (rows === 0) return refuseLog('log-no-rows', name, 'holds no value that could be read.');
  if (rows === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one moment; a stop needs many, at ten a second or more.',
    );
  reportSeams(events.time, issues);
  const channels = kept.map(({ stored: { signal, group, column }, plan }) =>
    plannedChannel(signal, plan, events.column(group, column), issues),
  );
  const { time, segmentStarts, offsets } = events.time;
  const table: ChannelTable = {
    time,
    channels,
    segmentStarts,
    epoch: log.clock === 'date-time' ? isoText(offsets[0]!) : null,
    ...(log.clock === null ? {} : { clock: { kind: log.clock, offsets } }),
    headings: log.headings,
    source: { name, format: log.format, bytes: log.bytes, rows },
    issues: [],
  };
  return speaksOfSpeed(channels)
    ? { ok: true, table: { ...table, issues: issues.list() } }
    : bySpeedless(table, issues);
}

interface KeptSignal {
  readonly stored: StoredSignal;
  readonly plan: SignalPlan;
}

/** All signals, or those alone that are used where all would take too much memory. */
function affordable(
  { signals, store, issues }: SignalLog,
  plans: readonly SignalPlan[],
): readonly KeptSignal[] {
  const all = signals.map((stored, index) => ({ stored, plan: plans[index]! }));
  const used = all.filter(({ plan }) => plan.role !== 'unknown');
  if (used.length === 0 || store.events() * all.length <= mostValues) return all;
  issues.add(
    'channel-left-out',
    null,
    () =>
      `The log is so large that ${all.length - used.length} signals which nothing is computed from were left out.`,
  );
  return used;
}

function speaksOfSpeed(channels: readonly Channel[]): boolean {
  return channels.some(({ quantity }) => quantity === 'speed' || quantity === 'wheel-speed');
}

function bySpeedless(table: ChannelTable, issues: IssueList): ReadOutcome {
  const positions = withSpeedFromPositions(table, issues);
  if (positions !== null) return positions;
  return refuseLog(
    'log-no-speed',
    table.source.name,
    `holds no signal that tells the speed; its signals are ${quotedList(table.channels.map(({ name }) => name))}. Say which one is the speed and in which unit.`,
  );
}
