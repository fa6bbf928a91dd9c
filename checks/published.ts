import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { agrees } from './agrees.ts';

/** A number as a source prints it, and how far ours may be from it. */
export interface PublishedFigure {
  /** Short name of the case, for example '5-17'; with a letter where one case prints several numbers. */
  readonly id: string;
  /** Key in docs/sources.md. */
  readonly source: string;
  /** What the number is, with the inputs that a reader needs to follow it. */
  readonly quantity: string;
  /** As printed by the source, in `unit`. */
  readonly printed: number;
  /** As printed; '' where the number has none. */
  readonly unit: string;
  /** Half the last printed digit, unless the case states a tolerance of its own (then `note` says so); in `unit`. */
  readonly tolerance: number;
  /** R: number or formula read in the source. M: from memory of it. X: a case made up from its formula. */
  readonly basis: 'R' | 'M' | 'X';
  /**
   * 'independent' where left out. 'transcription': our code holds the printed figure itself, or was fitted to it, so
   * that the row only shows that it was copied right; such rows are listed apart and not counted.
   */
  readonly evidence?: 'independent' | 'transcription';
  readonly note?: string;
  /** Set where the printed figure differs by design: the test holds that ours differs from it and agrees with `follows`. */
  readonly expectedDifference?: {
    /** What the inputs give, worked out apart from our code; in `unit`, held to the same tolerance. */
    readonly follows: number;
    readonly reason: string;
  };
}

/** A band in which a source puts a figure: an order of size, no number to agree with. */
export interface PublishedBand extends Pick<
  PublishedFigure,
  'id' | 'source' | 'quantity' | 'unit' | 'basis' | 'note'
> {
  /** Ends of the band as printed, in `unit`. */
  readonly low: number;
  readonly high: number;
}

/** One line of checks/README.md. */
export type CheckRow = (PublishedFigure | PublishedBand) & {
  readonly ours: number;
  /** Path of the check file from the repository root. */
  readonly file: string;
};

const root = fileURLToPath(new URL('..', import.meta.url));
const rowsFolder = new URL('../node_modules/.cache/standstill/checks/', import.meta.url);
const rows: CheckRow[] = [];
let registered = 0;

/**
 * Holds one number of ours against the number that a source prints: registers a test and a row of checks/README.md.
 * Called at the top level of a check file. The tolerance is never widened to pass: where the printed figure doesn't
 * follow from its inputs, `expectedDifference` says why and what does follow; the test then holds both.
 *
 * @param figure - what the source prints
 * @param ours - computes our number, in the printed unit
 */
export function published(figure: PublishedFigure, ours: () => number): void {
  register(figure, ours, (value) => {
    expect(figure.tolerance, 'a tolerance is needed').toBeGreaterThan(0);
    const { printed, tolerance, unit, expectedDifference } = figure;
    const found = agrees(figure, value) ? 'agrees' : 'differs';
    expect(found, `printed ${printed} ${unit}, ours ${value}`).toBe(
      expectedDifference ? 'differs' : 'agrees',
    );
    if (expectedDifference === undefined) return;
    const { follows } = expectedDifference;
    expect(agrees({ printed: follows, tolerance }, value), `${follows} follows, ours ${value}`).toBe(true);
  });
}

/**
 * Holds one number of ours within a band that a source gives. A band is weak evidence: it is listed apart and not
 * counted among the numbers.
 *
 * @param band - what the source says
 * @param ours - computes our number, in the printed unit
 */
export function publishedBand(band: PublishedBand, ours: () => number): void {
  register(band, ours, (value) => {
    expect(value).toBeGreaterThanOrEqual(band.low);
    expect(value).toBeLessThanOrEqual(band.high);
  });
}

function register(
  row: PublishedFigure | PublishedBand,
  ours: () => number,
  judge: (value: number) => void,
): void {
  if (registered === 0) afterAll(writeRows);
  registered += 1;
  test(`${row.source} ${row.id}: ${row.quantity}`, () => {
    const value = ours();
    rows.push({ ...row, ours: value, file: checkFile() });
    expect(Number.isFinite(value), `ours is ${value}`).toBe(true);
    judge(value);
  });
}

function checkFile(): string {
  return relative(root, expect.getState().testPath ?? '')
    .split(sep)
    .join('/');
}

/** Rows of a whole run only: a run of selected tests would lose the others' rows. */
function writeRows(): void {
  const file = rows[0]?.file;
  if (file === undefined || rows.length < registered) return;
  const name = createHash('sha256').update(file).digest('hex').slice(0, 16);
  mkdirSync(rowsFolder, { recursive: true });
  writeFileSync(new URL(`${name}.json`, rowsFolder), JSON.stringify(rows, null, 1));
}
