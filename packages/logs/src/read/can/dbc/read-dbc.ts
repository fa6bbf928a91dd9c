import type { IssueList } from '../../../channels/issue-list.ts';
import { refuseLog, type LogRefusal } from '../../log-refusal.ts';
import { dbcLines, type DbcLine } from './dbc-lines.ts';
import { settledMessage, type OpenMessage } from './settled-message.ts';
import type { MessageDescription } from './signal-description.ts';
import { signalLine } from './signal-line.ts';

export type DbcOutcome =
  { readonly ok: true; readonly messages: ReadonlyMap<number, MessageDescription> } | LogRefusal;

const messageShape = /^BO_\s+(\d+)\s+(\w+)\s*:\s*(\d+)\b/;
const floatShape = /^SIG_VALTYPE_\s+(\d+)\s+(\w+)\s*:?\s*([0-3])\s*;/;
const multiplexShape = /^SG_MUL_VAL_\s+(\d+)\s+(\w+)\s+(\w+)\s+(\d[\d\s,-]*);/;
/** A message of this name holds signals that are in no frame. */
const orphanage = 'VECTOR__INDEPENDENT_SIG_MSG';
const longestFrame = 64;

/**
 * Reads what a DBC file says of frames and their signals: BO_ and SG_ with multiplexing, SIG_VALTYPE_, SG_MUL_VAL_. All
 * else (names of values, comments, attributes) is passed over; a fragment without VERSION and BU_ is taken.
 *
 * @param text - the file
 * @param name - what it is called, for sentences
 * @param issues - where signals that can't be are told
 * @returns the messages by identifier, or why the file can't be used
 */
export function readDbc(text: string, name: string, issues: IssueList): DbcOutcome {
  const messages = new Map<number, OpenMessage>();
  let open: OpenMessage | null = null;
  for (const line of dbcLines(text)) {
    if (/^BO_\s/.test(line.text)) {
      const message = openMessage(line);
      if (message === null) return broken(name, line, "'BO_ 176 NAME: 8 SENDER', with 0 to 64 bytes");
      open = message;
      if (messages.has(message.id))
        issues.add(
          'double-description',
          line.number,
          () => `${name} describes frame ${message.id} twice; the first counts.`,
        );
      else messages.set(message.id, message);
    } else if (/^SG_\s/.test(line.text)) {
      const signal = signalLine(line.text);
      if (signal === null || open === null)
        return broken(name, line, `'SG_ NAME : 7|16@0+ (0.01,0) [0|250] "km/h" RECEIVER' below its BO_`);
      open.signals.push({ ...signal, line: line.number });
    } else addDetail(line.text, messages);
  }
  const settled = [...messages.values()]
    .filter((message) => message.name !== orphanage)
    .map((message) => settledMessage(message, name, issues));
  if (settled.length === 0)
    return refuseLog(
      'signals-not-read',
      name,
      "describes no frame: no line begins with 'BO_', as in a DBC file.",
    );
  return { ok: true, messages: new Map(settled.map((message) => [message.id, message])) };
}

function openMessage({ text }: DbcLine): OpenMessage | null {
  const parts = messageShape.exec(text);
  if (parts === null) return null;
  const [id, length] = [Number(parts[1]), Number(parts[3])];
  const isOrphanage = parts[2] === orphanage;
  if (!isOrphanage && (id > 0xffffffff || length > longestFrame)) return null;
  return { id, name: parts[2]!, length, signals: [], floats: new Set(), multiplexed: new Map() };
}

function addDetail(text: string, messages: ReadonlyMap<number, OpenMessage>): void {
  const float = floatShape.exec(text);
  if (float !== null && float[3] !== '0') messages.get(Number(float[1]))?.floats.add(float[2]!);
  const ranges = multiplexShape.exec(text);
  if (ranges === null) return;
  const values = [...ranges[4]!.matchAll(/(\d+)\s*-\s*(\d+)/g)].map(([, from, to]) => ({
    from: Number(from),
    to: Number(to),
  }));
  messages.get(Number(ranges[1]))?.multiplexed.set(ranges[2]!, { by: ranges[3]!, values });
}

function broken(name: string, { text, number }: DbcLine, accepted: string): LogRefusal {
  return refuseLog(
    'signals-not-read',
    name,
    `can not be read at line ${number}: '${text.slice(0, 60)}'; accepted is ${accepted}.`,
  );
}
