import { GrowingColumn } from '../../channels/growing-column.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import { timeBase, type FinishedTime } from '../time/time-base.ts';
import { sortedOrder } from './sorted-order.ts';

/** s; a smaller step back is a line that came late and is put in its place, a larger one a clock that was set back. */
const lateBy = 1;

/** Signals that always come together, each time at one moment. */
interface EventGroup {
  readonly clock: GrowingColumn;
  readonly columns: readonly GrowingColumn[];
  /** Where each stretch between two jumps of the clock begins: its number and the first event in it. */
  readonly starts: { readonly stretch: number; readonly first: number }[];
}

/** Collects events that come each at a moment of its own, and puts them on one time base. */
export interface EventStore {
  /** Makes a group of signals that come together; gives its number. */
  readonly addGroup: (width: number) => number;
  /** Tells the moment of the next events, s on the source's clock; every line's, kept or not. */
  readonly moment: (clock: number, line: number) => void;
  /** Keeps the values of a group at the moment. */
  readonly put: (group: number, values: ArrayLike<number>) => void;
  /** Share of the lines whose clock was before the line before. */
  readonly backwardShare: () => number;
  /** How many events are kept, a bound of the rows. */
  readonly events: () => number;
  /** The moments of some groups on one time base, and how to get their columns. */
  readonly finish: (groups: readonly number[]) => FinishedEvents;
}

export interface FinishedEvents {
  readonly time: FinishedTime;
  /** Values of a group's column on the time base, gaps as NaN. */
  readonly column: (group: number, column: number) => Float64Array;
}

/**
 * Makes an empty store.
 *
 * @param issues - where late lines and repeated moments are counted
 * @returns the store
 */
export function eventStore(issues: IssueList): EventStore {
  const groups: EventGroup[] = [];
  let stretch = 0;
  let newest = -Infinity;
  let now = NaN;
  let lines = 0;
  let backward = 0;
  return {
    addGroup: (width) => {
      const columns = Array.from({ length: width }, () => new GrowingColumn());
      return groups.push({ clock: new GrowingColumn(), columns, starts: [] }) - 1;
    },
    moment: (clock, line) => {
      lines += 1;
      if (clock < now) {
        backward += 1;
        issues.add(
          'late-line',
          line,
          () => 'The time of some lines is before the line before; each was put where its time says.',
        );
      }
      if (clock < newest - lateBy) {
        stretch += 1;
        newest = clock;
      } else newest = Math.max(newest, clock);
      now = clock;
    },
    put: (group, values) => {
      const { clock, columns, starts } = groups[group]!;
      if (starts.at(-1)?.stretch !== stretch) starts.push({ stretch, first: clock.length });
      clock.push(now);
      for (let index = 0; index < columns.length; index += 1) columns[index]!.push(values[index]!);
    },
    events: () => groups.reduce((sum, { clock }) => sum + clock.length, 0),
    backwardShare: () => backward / Math.max(1, lines),
    finish: (chosen) => finished(groups, chosen, issues),
  };
}

/** A group's moments, and for each the row that it came to; -1 for one at the very time of another. */
interface PlacedEvents {
  readonly clock: Float64Array;
  readonly row: Int32Array;
}

/** A group while its stretches are placed one after the other. */
interface PlacedGroup extends PlacedEvents {
  readonly starts: EventGroup['starts'];
  /** Index of the next stretch. */
  next: number;
}

function finished(
  groups: readonly EventGroup[],
  chosen: readonly number[],
  issues: IssueList,
): FinishedEvents {
  const placed = new Map<number, PlacedGroup>();
  for (const group of chosen) {
    const { clock: kept, starts } = groups[group]!;
    const clock = kept.finish();
    placed.set(group, { clock, row: new Int32Array(clock.length).fill(-1), starts, next: 0 });
  }
  const base = timeBase(null);
  let rows = 0;
  const stretches = new Set(
    [...placed.values()].flatMap(({ starts }) => starts.map(({ stretch }) => stretch)),
  );
  for (const stretch of [...stretches].sort((a, b) => a - b)) {
    const parts = [...placed.values()]
      .map((group) => nextEvents(group, stretch))
      .filter((part) => part !== null);
    const clocks = unique(parts.map(({ clock }) => clock)).filter((clock) => base.offer(clock));
    for (const part of parts) place(part, clocks, rows, issues);
    rows += clocks.length;
  }
  return {
    time: base.finish(),
    column: (group, index) => {
      const events = groups[group]!.columns[index]!.finish();
      const { row } = placed.get(group)!;
      const values = new Float64Array(rows).fill(NaN);
      for (let event = 0; event < events.length; event += 1)
        if (row[event]! >= 0) values[row[event]!] = events[event]!;
      return values;
    },
  };
}

/** The events of a group in a stretch; stretches are asked for in order. */
function nextEvents(group: PlacedGroup, stretch: number): PlacedEvents | null {
  const { starts, next, clock, row } = group;
  const start = starts[next];
  if (start?.stretch !== stretch) return null;
  const [first, end] = [start.first, starts[next + 1]?.first ?? clock.length];
  group.next += 1;
  return { clock: clock.subarray(first, end), row: row.subarray(first, end) };
}

/** All moments of the groups, ascending, each once. */
function unique(parts: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  all.sort();
  return all.filter((clock, index) => index === 0 || clock !== all[index - 1]);
}

function place(
  { clock, row }: PlacedEvents,
  clocks: Float64Array,
  firstRow: number,
  issues: IssueList,
): void {
  const order = sortedOrder(clock);
  let at = 0;
  let taken = -1;
  for (let i = 0; i < clock.length; i += 1) {
    const event = order === null ? i : order[i]!;
    while (at < clocks.length && clocks[at]! < clock[event]!) at += 1;
    if (clocks[at] === clock[event] && at !== taken) {
      row[event] = firstRow + at;
      taken = at;
    } else
      issues.add(
        'repeated-time',
        null,
        () => 'Of values of one signal at the very same time the first was kept.',
      );
  }
}
