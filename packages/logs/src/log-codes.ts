/** Why a log is refused as a whole, and what each code means. */
export const logRefusalCodes = {
  'log-empty': 'The file is empty.',
  'log-not-read': 'The file is of a kind that is not read; the sentence says what it looks like.',
  'log-not-a-table': 'The text is neither NMEA 0183 nor a table with a delimiter.',
  'log-no-column': 'A column that was asked for is not in the file.',
  'log-no-time': 'No column tells the time.',
  'log-no-speed': 'No column and no sentence tells the speed.',
  'log-speed-without-unit': 'The speed has no unit, and none is guessed.',
  'log-unknown-unit': 'A unit is not known, or does not fit what it is put to.',
  'log-no-rows': 'No row could be used.',
  'log-one-sample': 'There is only one sample.',
  'log-too-large': 'The file is larger than what is read at once in its format.',
} as const;

export type LogRefusalCode = keyof typeof logRefusalCodes;

/** What is reported beside a log that was read: skipped, repaired or doubted. */
export const logIssueCodes = {
  'lines-above-headings': 'Lines above the headings, not read.',
  'no-headings': 'No row of headings.',
  'heading-count': 'More or fewer headings than fields.',
  'double-heading': 'Two columns with one heading.',
  'text-column': 'A column of words; only its heading is kept.',
  'unit-missing': 'A column without a unit, kept but not used in arithmetic.',
  'unit-assumed': 'A unit that was assumed.',
  'time-unit-assumed': 'The unit of the time column was assumed.',
  'ragged-row': 'A row with too few or too many fields, skipped.',
  'open-quote': 'A quotation mark that is never closed.',
  'long-line': 'A line far too long for a log, skipped.',
  'row-without-time': 'A row whose time can not be read, skipped.',
  'repeated-time': 'A row at the very time of the row before, skipped.',
  'clock-jump-back': 'The clock jumps back; a new segment starts.',
  'time-gap': 'A gap in time; a new segment starts.',
  'not-a-number': 'A field that is no number, taken as a gap.',
  'speed-never-given': 'The speed column holds no value at all.',
  'bad-checksum': 'A sentence with a wrong checksum, skipped.',
  'no-checksum': 'A sentence without a checksum, skipped.',
  'not-ascii': 'A sentence with bytes that are not ASCII, skipped.',
  'torn-line': 'A line with remains of another sentence.',
  'not-a-sentence': 'A line that is no sentence and no comment, skipped.',
  'not-understood': 'A sentence with a good checksum that breaks the format, skipped.',
  'void-fix': 'A fix that the receiver itself calls void; its speed is a gap, never zero.',
  'no-date': 'No sentence tells the date; times are times of day.',
  'speed-without-time': 'A speed sentence before the first time, skipped.',
  'read-in-sections': 'A large log, read in sections; what is estimated from a log is estimated in each.',
} as const;

export type LogIssueCode = keyof typeof logIssueCodes;
