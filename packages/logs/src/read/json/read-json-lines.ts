import { issueList, type IssueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { textEncoding } from '../bytes/text-encoding.ts';
import { headerField } from '../csv/header-field.ts';
import { guessQuantity } from '../csv/guess-quantity.ts';
import { roleDimension } from '../csv/role-dimension.ts';
import { unitScale } from '../csv/unit-scale.ts';
import { textLines } from '../lines/text-lines.ts';
import { refuseLog } from '../log-refusal.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { eventStore, type EventStore } from '../signals/event-store.ts';
import type { SignalSource } from '../signals/signal-source.ts';
import { signalTable, type StoredSignal } from '../signals/signal-table.ts';
import { jsonEvent, type JsonEvent } from './json-event.ts';
import { knownSignals } from './known-signals.ts';

/** Signals that are kept at most. */
const mostSignals = 500;
/** s; larger clock readings are taken to count from 1970. */
const epochFrom = 1e8;

/** A signal of the log while it is read. Numbers and truths are kept apart: a truth among numbers is no number. */
interface OpenSignal {
  readonly group: number;
  numbers: number;
  truths: number;
}

/** Columns of a signal's group. */
const asNumber = 0;
const asTruth = 1;

/**
 * Reads a trace of JSON objects, one a line, each one value of one signal: `{"name":…,"value":…,"timestamp":…}`. A signal
 * that is only ever true or false is 1 and 0; words are gaps.
 *
 * @param bytes - the whole file
 * @param options - name and a person's word on the signals
 * @returns the channel table, or why the file can't be used
 */
export function readJsonLines(bytes: Uint8Array, options: ReadOptions): ReadOutcome {
  const issues = issueList();
  const store = eventStore(issues);
  const open = new Map<string, OpenSignal>();
  let firstClock = NaN;
  for (const { event, line } of events(bytes, issues)) {
    if (Number.isNaN(firstClock)) firstClock = event.clock;
    store.moment(event.clock, line);
    const signal = open.get(event.name) ?? opened(event, open, store.addGroup);
    if (signal !== null) keep(event, signal, store, line, issues);
    else
      issues.add(
        'channel-left-out',
        line,
        () => `The log has more than ${mostSignals} signals; those named later were left out.`,
      );
  }
  if (open.size === 0)
    return refuseLog(
      'log-not-read',
      options.name,
      'looks like JSON; read are lines of one object each with name, value and timestamp. Export the log as CSV.',
    );
  const signals = [...open].map(([name, { group, numbers, truths }]): StoredSignal => {
    const isSwitch = numbers === 0 && truths > 0;
    return { signal: signalOf(name, isSwitch, issues), group, column: isSwitch ? asTruth : asNumber };
  });
  return signalTable(
    {
      format: 'JSON lines',
      bytes: bytes.length,
      store,
      signals,
      clock: firstClock > epochFrom ? 'date-time' : null,
      headings: [...open.keys()].sort().join(' | '),
      issues,
    },
    options,
  );
}

function* events(bytes: Uint8Array, issues: IssueList): Generator<{ event: JsonEvent; line: number }> {
  for (const { text, number } of textLines(textChunks(bytes, textEncoding(bytes)), longLine(issues))) {
    const event = jsonEvent(text);
    if (event === null) issues.add('not-json', number, () => 'Lines that are no JSON object were skipped.');
    else if (event === 'other')
      issues.add('not-an-event', number, () => 'Objects without one name, value and timestamp were skipped.');
    else yield { event, line: number };
  }
}

function longLine(issues: IssueList): (line: number) => void {
  return (line) => issues.add('long-line', line, () => 'Lines far too long for a log were skipped.');
}

function opened(
  { name }: JsonEvent,
  open: Map<string, OpenSignal>,
  addGroup: (width: number) => number,
): OpenSignal | null {
  if (open.size >= mostSignals) return null;
  const signal = { group: addGroup(2), numbers: 0, truths: 0 };
  open.set(name, signal);
  return signal;
}

function keep(
  { name, value }: JsonEvent,
  signal: OpenSignal,
  store: EventStore,
  line: number,
  issues: IssueList,
): void {
  const isNumber = typeof value === 'number' && Number.isFinite(value);
  const isTruth = typeof value === 'boolean';
  if (isNumber) signal.numbers += 1;
  if (isTruth) signal.truths += 1;
  const isMixed = signal.numbers > 0 && signal.truths > 0;
  if ((isMixed && isTruth) || (!isNumber && !isTruth && value !== null))
    issues.add(
      'not-a-number',
      line,
      () => `Signal '${name.slice(0, 60)}' holds values that are no numbers; they are gaps.`,
      name,
    );
  if (isNumber || isTruth) store.put(signal.group, [isNumber ? value : NaN, isTruth ? Number(value) : NaN]);
}

function signalOf(name: string, isSwitch: boolean, issues: IssueList): SignalSource {
  const shown = name.slice(0, 200);
  const known = Object.hasOwn(knownSignals, name) ? knownSignals[name]! : null;
  if (known !== null && (known.role !== 'brake-switch' || isSwitch)) {
    if (known.unit !== '')
      issues.add(
        'unit-assumed',
        null,
        () =>
          `Signal '${name}' is taken to be in ${known.unit}, as the open message format states it; the log itself does not say.`,
        name,
      );
    return {
      name: shown,
      guessFrom: [],
      unit: known.unit,
      unitOrigin: 'assumed',
      role: known.role,
      isSwitch,
    };
  }
  const parts = headerField(shown, (part, unit) => {
    const dimension = roleDimension[guessQuantity(part)];
    return dimension !== null && unitScale(unit, dimension) !== null;
  });
  return { name: shown, guessFrom: [parts.name], unit: parts.unit, unitOrigin: 'header', isSwitch };
}
