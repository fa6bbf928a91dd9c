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
  const signals = new Map<string, SignalDescription>();
  const switches = new Set(message.signals.filter((signal) => signal.isSwitch).map((signal) => signal.name));
  for (const signal of message.signals) {
    const presence = presenceOf(message, signal, switches);
    const trouble = signals.has(signal.name) ? 'twice' : troubleOf(message, signal, presence, switches);
    if (trouble !== null) {
      const sentence = `${fileName} describes signal '${name}.${signal.name}' ${trouble}; it is left out.`;
      issues.add('signal-impossible', signal.line, () => sentence, `${name}.${signal.name}`);
      continue;
    }
    const { bits, factor, offset, range, unit, isSwitch } = signal;
    const coding = message.floats.has(signal.name) ? ('float' as const) : signal.coding;
    const described = { bits, coding, factor, offset, range, unit, isSwitch, presence: presence ?? null };
    signals.set(signal.name, { name: signal.name, ...described });
  }
  return { id, name, length, signals: [...signals.values()] };
}

/** When a signal is there: null for always, undefined where the file does not say by which switch. */
function presenceOf(
  { multiplexed }: OpenMessage,
  signal: SignalLine,
  switches: ReadonlySet<string>,
): Presence | null | undefined {
  const stated = multiplexed.get(signal.name);
  if (stated !== undefined) return stated;
  if (signal.multiplexedBy === null) return null;
  const others = [...switches].slice(0, 3).filter((name) => name !== signal.name);
  const [only] = others;
  if (only === undefined || others.length > 1) return undefined;
  return { by: only, values: [{ from: signal.multiplexedBy, to: signal.multiplexedBy }] };
}

function troubleOf(
  { length, floats }: OpenMessage,
  signal: SignalLine,
  presence: Presence | null | undefined,
  switches: ReadonlySet<string>,
): string | null {
  if (signal.bits.some((bit) => bit >= length * 8)) return `outside its ${length} bytes`;
  const size = signal.bits.length;
  if (floats.has(signal.name) && size !== 32 && size !== 64)
    return `as a float of ${size} bits, not 32 or 64`;
  if (presence === undefined) return 'as multiplexed and not by which switch';
  if (presence !== null && !switches.has(presence.by))
    return `as multiplexed by '${presence.by}', which is no switch of its frame`;
  return null;
}
