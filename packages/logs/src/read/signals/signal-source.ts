import type { Channel } from '../../channels/channel-table.ts';
import type { ColumnRole } from '../csv/guess-quantity.ts';

/** A named signal as a log or its description has it, before anything is decided about it. */
export interface SignalSource {
  /** As it is shown and chosen by. */
  readonly name: string;
  /** What to guess its quantity from, the best name first; not looked at where `role` is told. */
  readonly guessFrom: readonly string[];
  /** Unit of its numbers, '' where none is told. */
  readonly unit: string;
  /** Who says so. */
  readonly unitOrigin: Channel['unitOrigin'];
  /** What the format itself says it is. */
  readonly role?: ColumnRole;
  /** Whether it only ever is on or off. */
  readonly isSwitch: boolean;
  /** Least and greatest number that it can be by its own description; what lies outside is a gap. */
  readonly range?: { readonly least: number; readonly greatest: number };
}

/** What was decided about a signal. */
export interface SignalPlan {
  readonly role: ColumnRole;
  readonly unitAsRead: string;
  readonly unitOrigin: Channel['unitOrigin'];
  readonly chosenBy: Channel['chosenBy'];
  /** SI = number × factor + shift. */
  readonly factor: number;
  readonly shift: number;
}
