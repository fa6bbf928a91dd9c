import { leastSquares } from '@standstill/numerics';
import type { AdjustmentRows } from './adjustment-rows.ts';
import type { AdjustmentTerm } from './adjustment-term.ts';
import type { AdjustmentName, NotAdjusted } from './adjustment.ts';
import { carriesTerms } from './carries-terms.ts';

/** Share of a column's variance that must be its own: under it the column is taken for a mix of the others. */
const leastOwn = 0.01;

/** What the regression takes, and what it leaves out. */
export interface ChosenTerms {
  readonly terms: readonly AdjustmentTerm[];
  readonly notAdjusted: readonly NotAdjusted[];
}

/**
 * Picks what the stops carry, in the order of the candidates and never by how much a term explains: that would make the
 * interval too narrow.
 *
 * @param rows - both sets
 * @returns the terms, and what was left out with the reason
 */
export function chosenTerms(rows: AdjustmentRows): ChosenTerms {
  const terms: AdjustmentTerm[] = [];
  const notAdjusted: NotAdjusted[] = rows.incomplete.map((name) => ({
    name,
    why: 'not-recorded',
    movesWith: [],
  }));
  const leave = (name: AdjustmentName, why: NotAdjusted['why'], movesWith: NotAdjusted['movesWith'] = []) =>
    notAdjusted.push({ name, why, movesWith });
  for (const candidate of rows.candidates) {
    const { name, column } = candidate;
    const movesWith = companions(column, rows, terms);
    if (isConstant(column)) {
      if (name !== 'first-run') leave(name, 'constant');
    } else if (movesWith.length === 1 && movesWith[0] === 'change')
      leave(name, 'moves-with-change', movesWith);
    else if (movesWith.length > 0) leave(name, 'moves-with-others', movesWith);
    else if (!carriesTerms(rows, [...terms, candidate])) leave(name, 'too-few-stops');
    else terms.push(candidate);
  }
  return { terms, notAdjusted };
}

function isConstant(column: readonly number[]): boolean {
  return Math.max(...column.map(Math.abs)) <= 1e-9;
}

/** What a column moves with: the change alone where that is enough, else those terms without which it would be free. */
function companions(
  column: readonly number[],
  rows: AdjustmentRows,
  terms: readonly AdjustmentTerm[],
): NotAdjusted['movesWith'] {
  const among = (chosen: readonly AdjustmentTerm[], withChange: boolean): boolean =>
    ownShare(column, [
      rows.ones,
      ...(withChange ? [rows.change] : []),
      ...chosen.map((term) => term.column),
    ]) < leastOwn;
  if (isConstant(column) || !among(terms, true)) return [];
  if (among([], true)) return ['change'];
  const needed = terms.filter(
    (term) =>
      !among(
        terms.filter((other) => other !== term),
        true,
      ),
  );
  const names = (needed.length > 0 ? needed : terms).map(({ name }) => name);
  return among(terms, false) ? names : ['change', ...names];
}

/** Share of the variance of a column that the others don't explain; 1 where there are too few rows to tell. */
function ownShare(column: readonly number[], others: readonly (readonly number[])[]): number {
  if (column.length <= others.length) return 1;
  const { residualStandardDeviation: left, degreesOfFreedom } = leastSquares(others, column);
  return (left ** 2 * degreesOfFreedom) / column.reduce((sum, value) => sum + value ** 2, 0);
}
