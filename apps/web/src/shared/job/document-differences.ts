/** One place in which two documents differ. */
export interface DocumentDifference {
  readonly path: string;
  readonly mine: unknown;
  readonly theirs: unknown;
  /** Who changed it since both began; null where both did. */
  readonly changedBy: 'me' | 'them' | null;
}

/** Every place in which two documents differ, told apart by what both began from. */
export function documentDifferences(
  mine: unknown,
  theirs: unknown,
  base: unknown,
): readonly DocumentDifference[] {
  return differ('', mine, theirs, base);
}

function differ(path: string, mine: unknown, theirs: unknown, base: unknown): DocumentDifference[] {
  if (same(mine, theirs)) return [];
  if (!isBranch(mine) || !isBranch(theirs))
    return [{ path, mine, theirs, changedBy: changedBy(mine, theirs, base) }];
  const keys = new Set([...Object.keys(mine), ...Object.keys(theirs)]);
  const below = isBranch(base) ? base : {};
  return [...keys].flatMap((key) =>
    differ(path ? `${path}.${key}` : key, mine[key], theirs[key], below[key]),
  );
}

function changedBy(mine: unknown, theirs: unknown, base: unknown): DocumentDifference['changedBy'] {
  if (same(theirs, base)) return 'me';
  return same(mine, base) ? 'them' : null;
}

/** A mapping that is looked into; a quantity with its unit and origin is one value. */
function isBranch(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value) && !('value' in value);
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** A value of the document in a line, as a person reads it. */
export function shownValue(value: unknown): string {
  if (value === undefined) return 'left out';
  if (Array.isArray(value)) return value.map(shownValue).join(', ');
  if (typeof value !== 'object' || value === null) return plain(value);
  const { value: amount, unit, spread, origin, title } = value as Record<string, unknown>;
  if (amount === undefined) return title === undefined ? JSON.stringify(value) : plain(title);
  const number = [amount, ...(unit === undefined ? [] : [unit])].map(plain).join(' ');
  const width = spread === undefined ? '' : ` ± ${plain(spread)}`;
  return `${number}${width}${origin === undefined ? '' : `, ${plain(origin)}`}`;
}

function plain(value: unknown): string {
  return typeof value === 'string' ? value : JSON.stringify(value);
}
