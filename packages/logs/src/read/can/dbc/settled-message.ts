import type { IssueList } from '../../../channels/issue-list.ts';
import type { MessageDescription, Presence, SignalDescription } from './signal-description.ts';
import type { SignalLine } from './signal-line.ts';

/** A message while its file is read. */
export interface OpenMessage {
  readonly id: number;
  readonly name: string;
  readonly length: number;
  readonly signals: (SignalLine & { readonly line: number })[];
  /** Names of signals that are floating-point numbers. */
  readonly floats: Set<string>;
  /** What is said of multiplexed signals beside `m0`. */
  readonly multiplexed: Map<string, Presence>;
}

/**
 * Settles a message when all of its file is known: what is a float, and with which value of which switch a signal is
 * there. A signal that can't be is left out and told.
 *
 * @param message - as read
 * @param fileName - for sentences
 * @param issues - where signals that can't be are told
 * @returns the message
 */
export function settledMessage(
  message: OpenMessage,
  fileName: string,
  issues: IssueList,
): MessageDescription {
  const { id, name, length } = message;
  const signals: SignalDescription[] = [];
  for (const signal of message.signals) {
    const presence = presenceOf(message, signal);
    const trouble = troubleOf(message, signal, signals, presence);
    if (trouble !== null) {
      const sentence = `${fileName} describes signal '${name}.${signal.name}' ${trouble}; it is left out.`;
      issues.add('signal-impossible', signal.line, () => sentence, `${name}.${signal.name}`);
      continue;
    }
    const isFloat = message.floats.has(signal.name);
    const { bits, factor, offset, range, unit, isSwitch } = signal;
    const coding = isFloat ? ('float' as const) : signal.coding;
    signals.push({
      name: signal.name,
      bits,
      coding,
      factor,
      offset,
      range,
      unit,
      isSwitch,
      presence: presence ?? null,
    });
  }
  return { id, name, length, signals };
}

function presenceOf({ signals, multiplexed }: OpenMessage, signal: SignalLine): Presence | null | undefined {
  const stated = multiplexed.get(signal.name);
  if (stated !== undefined) return stated;
  if (signal.multiplexedBy === null) return null;
  const switches = signals.filter(({ isSwitch, name }) => isSwitch && name !== signal.name);
  const [only] = switches;
  if (only === undefined || switches.length > 1) return undefined;
  return { by: only.name, values: [{ from: signal.multiplexedBy, to: signal.multiplexedBy }] };
}

function troubleOf(
  { length, floats, signals }: OpenMessage,
  signal: SignalLine,
  before: readonly SignalDescription[],
  presence: Presence | null | undefined,
): string | null {
  if (signal.bits.some((bit) => bit >= length * 8)) return `outside its ${length} bytes`;
  if (before.some(({ name }) => name === signal.name)) return 'twice';
  const size = signal.bits.length;
  if (floats.has(signal.name) && size !== 32 && size !== 64)
    return `as a float of ${size} bits, not 32 or 64`;
  if (presence === undefined) return 'as multiplexed and not by which switch';
  if (presence !== null && !signals.some(({ name, isSwitch }) => name === presence.by && isSwitch))
    return `as multiplexed by '${presence.by}', which is no switch of its frame`;
  return null;
}
