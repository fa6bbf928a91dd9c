import type { ClassCurve } from '@standstill/braking';
import type { QuantityInput } from '../document/quantity-input.ts';
import { readQuantity } from '../document/read-quantity.ts';
import { defaultSpread } from '../facts/default-spreads.ts';
import type { Fact } from '../facts/fact.ts';
import type { KnownTable } from '../job.ts';
import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import { classReason } from './filler.ts';
import type { Filler } from './filler.ts';

interface TableFacts {
  readonly path: DocumentPath;
  readonly at: Fact;
  readonly value: Fact;
}

/** A table as the person states it; its points share the mean of their spreads as one factor. */
export function statedTable(
  filler: Filler,
  rows: readonly (readonly [QuantityInput, QuantityInput])[],
  facts: TableFacts,
): KnownTable {
  const at = rows.map(([input], row) => filler.stated(facts.at, input, [...facts.path, row, 0]).value);
  const values = rows.map(([, input], row) => filler.stated(facts.value, input, [...facts.path, row, 1]));
  refuseUnordered(filler, at, facts.path);
  const origin = values[0]?.origin ?? 'specified';
  const spreads = values.map((known) => (known.value === 0 ? 0 : known.spread / known.value));
  const spread = spreads.reduce((sum, each) => sum + each, 0) / spreads.length;
  return { at, values: values.map((known) => known.value), factor: factor(facts, origin, spread) };
}

/** One figure for the whole range. */
export function statedConstant(filler: Filler, input: QuantityInput, facts: TableFacts): KnownTable {
  const known = filler.stated(facts.value, input, facts.path);
  const reading = readQuantity(input, facts.value);
  const stated = reading.ok ? reading.spread : null;
  const spread = stated ?? defaultSpread(facts.value.spread, known.origin, known.value);
  return { at: [20], values: [known.value], factor: factor(facts, known.origin, spread / known.value) };
}

interface ClassTable extends TableFacts {
  readonly title: string;
  readonly points: readonly number[];
  readonly curve: ClassCurve;
}

/** The table of a class, listed as assumed. */
export function classTable(filler: Filler, table: ClassTable): KnownTable {
  const { path, value, title, points, curve } = table;
  const percent = Math.round(100 * curve.factorSpread);
  filler.assumedWord(path, value.title, `table of ${title} ± ${percent} %`, classReason(title, curve));
  return { at: points, values: curve.values, factor: factor(table, 'assumed', curve.factorSpread) };
}

function factor(
  { path, value: fact }: TableFacts,
  origin: 'measured' | 'specified' | 'assumed',
  spread: number,
): KnownTable['factor'] {
  return { value: 1, origin, spread, path: pathText(path), low: 0.2, high: 3, fact };
}

function refuseUnordered(filler: Filler, at: readonly number[], path: DocumentPath): void {
  const row = at.findIndex((value, index) => index > 0 && value <= (at[index - 1] ?? -Infinity));
  if (row < 0) return;
  const message = `${pathText([...path, row])} does not rise above the row before it; give the rows in rising order`;
  const accepted = 'rows in rising order';
  filler.findings.push({
    code: 'not-ascending',
    path: [...path, row],
    at: 'value',
    found: `row ${row + 1}`,
    accepted,
    message,
  });
}
