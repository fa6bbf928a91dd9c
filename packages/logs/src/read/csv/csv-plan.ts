import type { IssueList } from '../../channels/issue-list.ts';
import type { TextEncoding } from '../bytes/text-encoding.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvDialect } from './csv-dialect.ts';
import type { TimePlan } from './time-plan.ts';

/** How a CSV file is to be read, decided from its beginning. */
export interface CsvPlan {
  readonly ok: true;
  readonly name: string;
  /** Encoding of the file, and of its bytes as they are fed (UTF-16 comes as UTF-8). */
  readonly fileEncoding: TextEncoding;
  readonly encoding: Exclude<TextEncoding, 'utf-16le' | 'utf-16be'>;
  readonly dialect: CsvDialect;
  readonly time: TimePlan;
  /** The columns that are kept, without the time. */
  readonly columns: readonly ColumnPlan[];
  /** The headings in one line; null where the file has none. */
  readonly headings: string | null;
  readonly issues: IssueList;
  /** Usual number of bytes in a row. */
  readonly rowLength: number;
}
