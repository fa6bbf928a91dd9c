import type { Channel, ChannelTable } from '../../channels/channel-table.ts';
import type { ValueRange } from '../../channels/value-range.ts';
import type { StopSearch } from '../../stops/find-stops.ts';

/** A channel without its values, and what they go from and to. */
export type ChannelSummary = Omit<Channel, 'values'> & { readonly range: ValueRange | null };

/** What a log holds, without its values: what is told of it, and the stops that were found in it. */
export interface LogScan extends StopSearch, Pick<ChannelTable, 'headings' | 'epoch' | 'source' | 'issues'> {
  readonly ok: true;
  readonly channels: readonly ChannelSummary[];
  /** s, from the first row to the last. */
  readonly duration: number;
}
