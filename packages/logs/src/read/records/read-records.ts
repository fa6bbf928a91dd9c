import { issueList, type IssueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { numberField } from '../csv/number-field.ts';
import { textLines } from '../lines/text-lines.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { eventStore } from '../signals/event-store.ts';
import { signalTable, type StoredSignal } from '../signals/signal-table.ts';
import { recordKind, type RecordKind } from './record-kind.ts';
import { recordLine, type RecordLine } from './record-line.ts';

/** Signals that are kept at most; a log with more names has damage among them. */
const mostSignals = 500;

/**
 * Reads a log of named records, one a line, `milliseconds$NAME,field,…`, whose separators may be mixed. Fields of known
 * records become channels with a unit, those of others are kept and not used. What a record's own mask calls invalid
 * is a gap.
 *
 * @param bytes - the whole file
 * @param options - name and a person's word on the signals
 * @returns the channel table, or why the file can't be used
 */
export function readRecords(bytes: Uint8Array, options: ReadOptions): ReadOutcome {
  const issues = issueList();
  const store = eventStore(issues);
  const kinds = new Map<string, RecordKind & { readonly group: number }>();
  let count = 0;
  for (const { text, number } of textLines(textChunks(bytes, 'windows-1252'), longLine(issues))) {
    if (/^\s*[#;]/.test(text)) continue;
    const record = recordLine(text);
    if (record === null) {
      issues.add('not-a-record', number, () => 'Lines that are no record and no comment were skipped.');
      continue;
    }
    store.moment(record.clock, number);
    let kind = kinds.get(record.name);
    if (kind === undefined) {
      const found = recordKind(record.name, record.fields.length);
      count += found.width;
      if (count > mostSignals) {
        issues.add(
          'channel-left-out',
          number,
          () => `The log has more than ${mostSignals} signals; those named later were left out.`,
        );
        count -= found.width;
        continue;
      }
      kind = { ...found, group: store.addGroup(found.width) };
      kinds.set(record.name, kind);
    }
    const values = valuesOf(record, kind, number, issues);
    if (values !== null) store.put(kind.group, values);
  }
  const signals = [...kinds.values()].flatMap(({ signals: fields, group }) =>
    fields.map((signal, column): StoredSignal => ({ signal, group, column })),
  );
  return signalTable(
    {
      format: 'named records',
      bytes: bytes.length,
      store,
      signals,
      clock: null,
      headings: [...kinds.keys()].sort().join(' | '),
      issues,
    },
    options,
  );
}

function longLine(issues: IssueList): (line: number) => void {
  return (line) => issues.add('long-line', line, () => 'Lines far too long for a log were skipped.');
}

function valuesOf(
  { name, fields }: RecordLine,
  { width, signals, isMasked }: RecordKind,
  line: number,
  issues: IssueList,
): Float64Array | null {
  if (fields.length !== width) {
    issues.add(
      'ragged-row',
      line,
      () => `Records '${name}' with more or fewer than ${width} fields were skipped.`,
      name,
    );
    return null;
  }
  const values = Float64Array.from(fields, (field) => numberField(field, false));
  fields.forEach((field, index) => {
    if (field !== '' && Number.isNaN(values[index]!))
      issues.add(
        'not-a-number',
        line,
        () => `Record '${name}' holds fields that are no numbers; they are gaps.`,
        name,
      );
  });
  if (isMasked) dropInvalid(values, signals.length, line, issues);
  return values;
}

/** A value without its bit in the mask is a gap. */
function dropInvalid(values: Float64Array, width: number, line: number, issues: IssueList): void {
  const mask = Number.isInteger(values[0]!) ? values[0]! : 0;
  for (let index = 1; index < width; index += 1) {
    if ((Math.floor(mask / 2 ** (index - 1)) & 1) === 1) continue;
    if (index === 1)
      issues.add('void-fix', line, () => 'Some records call their own value invalid; it is a gap there.');
    values[index] = NaN;
  }
}
