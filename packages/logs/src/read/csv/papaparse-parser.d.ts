/**
 * The part of papaparse that this room uses. Its published types bring the types of Node along, and this room must
 * compile without them; the compiler's `paths` points here instead.
 */
interface ParseError {
  readonly type: string;
  readonly code: string;
  readonly row?: number;
}

interface ParseResult {
  readonly data: string[][];
  readonly errors: readonly ParseError[];
  /** `cursor`: characters of the input that were used up. */
  readonly meta: { readonly cursor: number };
}

interface ParserConfig {
  readonly delimiter: string;
  readonly newline: '\n' | '\r';
  readonly quoteChar?: string;
  readonly fastMode?: boolean;
}

/** The row splitter itself: text in, rows of fields out. */
declare class Parser {
  constructor(config: ParserConfig);
  parse(input: string, baseIndex: number, ignoreLastRow: boolean): ParseResult;
}

declare const papaparse: { readonly Parser: typeof Parser };
export default papaparse;
