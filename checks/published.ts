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
  /** Half the last printed digit, unless the source gives a tolerance of its own; in `unit`. */
  readonly tolerance: number;
  /** R: number or formula read in the source. M: from memory of it. X: a case made up from its formula. */
  readonly basis: 'R' | 'M' | 'X';
  readonly note?: string;
  /** Set where the printed figure doesn't follow from its own formula; then the test holds that it does differ. */
  readonly expectedDifference?: { readonly reason: string };
}

/** One line of checks/README.md. */
export interface CheckRow extends PublishedFigure {
  readonly ours: number;
  /** Path of the check file from the repository root. */
  readonly file: string;
}

const root = fileURLToPath(new URL('..', import.meta.url));
const rowsFolder = new URL('../node_modules/.cache/standstill/checks/', import.meta.url);
const rows: CheckRow[] = [];
let registered = 0;

/**
 * Holds one number of ours against the number that a source prints: registers a test and a row of checks/README.md.
 * Called at the top level of a check file. The tolerance is never widened to pass: where the printed figure doesn't
 * follow from its own formula, `expectedDifference` says why, and the test fails as soon as the two agree.
 *
 * @param figure - what the source prints
 * @param ours - computes our number, in the printed unit
 */
export function published(figure: PublishedFigure, ours: () => number): void {
  if (registered === 0) afterAll(writeRows);
  registered += 1;
  test(`${figure.source} ${figure.id}: ${figure.quantity}`, () => {
    expect(figure.tolerance, 'a tolerance is needed').toBeGreaterThan(0);
    const value = ours();
    rows.push({ ...figure, ours: value, file: checkFile() });
    expect(Number.isFinite(value), `ours is ${value}`).toBe(true);
    const expected = figure.expectedDifference === undefined ? 'agrees' : 'differs';
    const found = agrees(figure, value) ? 'agrees' : 'differs';
    expect(found, `printed ${figure.printed} ${figure.unit}, ours ${value}`).toBe(expected);
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
