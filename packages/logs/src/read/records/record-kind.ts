import type { SignalSource } from '../signals/signal-source.ts';
import { knownRecords, type RecordField } from './known-records.ts';

/** What records of one name hold. */
export interface RecordKind {
  /** Fields behind the name; a record with another number of them is broken. */
  readonly width: number;
  readonly signals: readonly SignalSource[];
  /** Whether the first field says which of the others are valid. */
  readonly isMasked: boolean;
}

/**
 * What the records of a name hold: by the table of known ones, else numbered fields that are kept and not used.
 *
 * @param name - of the record
 * @param width - number of fields in the first of them
 */
export function recordKind(name: string, width: number): RecordKind {
  const known = Object.hasOwn(knownRecords, name) ? knownRecords[name]! : null;
  const isMasked = known !== null && width === known.length + 1;
  const fields = isMasked ? [null, ...known] : Array.from({ length: width }, () => null);
  return { width, isMasked, signals: fields.map((field, index) => signalOf(name, field, index)) };
}

function signalOf(record: string, field: RecordField | null, index: number): SignalSource {
  return {
    name: `${record}.${field?.name ?? index + 1}`,
    guessFrom: [],
    unit: field?.unit ?? '',
    unitOrigin: 'format',
    role: field?.role ?? 'unknown',
    isSwitch: false,
  };
}
