import { issueList, type IssueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { textLines } from '../lines/text-lines.ts';
import { refuseLog, type LogRefusal } from '../log-refusal.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { eventStore, type EventStore } from '../signals/event-store.ts';
import { signalTable, type StoredSignal } from '../signals/signal-table.ts';
import { canLines, type CanFormat, type NumberedFrame } from './can-lines.ts';
import { readDbc } from './dbc/read-dbc.ts';
import type { MessageDescription } from './dbc/signal-description.ts';
import { idText } from './frame.ts';
import { hasDescribedLength } from './frame-length.ts';
import { frameSignals } from './frame-signals.ts';
import { messageDecoder } from './message-decoder.ts';
import { seenIdentifiers } from './seen-identifiers.ts';
import { traceStart } from './trace-start.ts';

/** Larger clock readings than this, s, are taken to count from 1970. */
const epochFrom = 1e8;

/**
 * Reads a log of raw CAN frames through a DBC file that describes their signals. Each message keeps its own moments;
 * signals are named 'MESSAGE.SIGNAL'. A frame that is not as long as described gives no value.
 *
 * @param bytes - the whole file
 * @param options - name, the DBC as `signals`, a person's word on them
 * @param format - candump's lines or a numbered trace
 * @returns the channel table, or why the file can't be used
 */
export function readCan(bytes: Uint8Array, options: ReadOptions, format: CanFormat): ReadOutcome {
  const issues = issueList();
  const lines = textLines(textChunks(bytes, 'windows-1252'), (line) =>
    issues.add('long-line', line, () => 'Lines far too long for a log were skipped.'),
  );
  const start = format === 'trace' ? traceStart(bytes, options.name) : { ok: true as const, clock: NaN };
  if (!start.ok) return start;
  const frames = canLines(lines, format, issues);
  const { signals: description } = options;
  if (description === undefined) return withoutDescription(frames, options.name);
  const dbc = readDbc(description.text, description.name, issues);
  if (!dbc.ok) return dbc;
  const log = collected(frames, dbc.messages, issues, start.clock);
  if (log.seen.size === 0) return noFrames(options.name, issues);
  if (log.messages.length === 0)
    return refuseLog(
      'signals-not-in-log',
      options.name,
      `holds none of the frames that ${description.name} describes; it holds ${seenIdentifiers(log.seen)}.`,
    );
  const signals = log.messages.flatMap(({ message, group }) =>
    frameSignals(message).map((signal, column): StoredSignal => ({ signal, group, column })),
  );
  return signalTable(
    {
      format: format === 'trace' ? 'CAN trace' : 'candump',
      bytes: bytes.length,
      store: log.store,
      signals,
      clock: log.firstClock > epochFrom ? 'date-time' : null,
      headings: signals.map(({ signal }) => signal.name).join(' | '),
      issues,
    },
    options,
  );
}

function withoutDescription(frames: Iterable<NumberedFrame>, name: string): LogRefusal {
  const seen = new Map<number, number>();
  for (const { id } of frames) seen.set(id, (seen.get(id) ?? 0) + 1);
  return refuseLog(
    'log-needs-signals',
    name,
    `is a log of raw CAN frames; give the DBC file that describes their signals along with it. It holds the frames ${seenIdentifiers(seen)}.`,
  );
}

function noFrames(name: string, issues: IssueList): LogRefusal {
  if (issues.count('frame-without-time') > 0)
    return refuseLog('log-no-time', name, 'holds CAN frames without times; log with absolute times.');
  return refuseLog('log-no-rows', name, 'holds no CAN frame that could be read.');
}

/** The described messages of a log that it holds, and their values. */
interface CollectedFrames {
  readonly store: EventStore;
  readonly messages: readonly { readonly message: MessageDescription; readonly group: number }[];
  readonly seen: ReadonlyMap<number, number>;
  readonly firstClock: number;
}

function collected(
  frames: Iterable<NumberedFrame>,
  described: ReadonlyMap<number, MessageDescription>,
  issues: IssueList,
  startClock: number,
): CollectedFrames {
  const store = eventStore(issues);
  const decoders = new Map<number, { group: number; decode: (data: Uint8Array) => Float64Array }>();
  const messages: { message: MessageDescription; group: number }[] = [];
  const seen = new Map<number, number>();
  const shift = Number.isNaN(startClock) ? 0 : startClock;
  let firstClock = NaN;
  for (const { id, clock, data, isFlexible, line } of frames) {
    const moment = clock + shift;
    if (Number.isNaN(firstClock)) firstClock = moment;
    store.moment(moment, line);
    seen.set(id, (seen.get(id) ?? 0) + 1);
    const message = described.get(id);
    if (message === undefined || message.signals.length === 0) continue;
    if (!hasDescribedLength(data.length, message.length, isFlexible)) {
      const sentence = `Frames ${idText(id)} '${message.name}' are not ${message.length} bytes long as described; they were skipped.`;
      issues.add('frame-length', line, () => sentence, message.name);
      continue;
    }
    let decoder = decoders.get(id);
    if (decoder === undefined) {
      const group = store.addGroup(message.signals.length);
      decoder = { group, decode: messageDecoder(message) };
      decoders.set(id, decoder);
      messages.push({ message, group });
    }
    store.put(decoder.group, decoder.decode(data));
  }
  return { store, messages, seen, firstClock };
}
