/** How a CSV file is written. */
export interface CsvDialect {
  readonly delimiter: string;
  readonly newline: '\n' | '\r';
  readonly decimalComma: boolean;
  /** Headings as read; empty where the file has none. */
  readonly header: readonly string[];
  /** Units of a row of their own under the headings; empty where there is none. */
  readonly units: readonly string[];
  /** Number of rows before the first row of data. */
  readonly rowsBeforeData: number;
  /** Of these, how many stand above the headings. */
  readonly preambleRows: number;
  /** Fields in a row of data. */
  readonly width: number;
  /** Rows of data from the beginning of the file, to look at values before all are read. */
  readonly sample: readonly (readonly string[])[];
}
