import type { Channel } from '../../channels/channel-table.ts';
import type { ColumnRole } from './guess-quantity.ts';

/** What is to be done with one column of a CSV file. */
export interface ColumnPlan {
  readonly index: number;
  /** The heading as the source has it; a number is added where two columns have the same one. */
  readonly label: string;
  readonly role: ColumnRole;
  readonly unitAsRead: string;
  readonly unitOrigin: Channel['unitOrigin'];
  /** Whether a person said what it is. */
  readonly chosenBy: Channel['chosenBy'];
  /** SI = number × factor + shift. */
  readonly factor: number;
  readonly shift: number;
  /** Whether the column holds words, of which only the heading is kept. */
  readonly isText: boolean;
}
