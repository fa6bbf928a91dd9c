/** A value as it is quoted back to the person who wrote it. */
export function shown(value: unknown): string {
  if (typeof value === 'string') return `"${value.length > 60 ? `${value.slice(0, 57)}…` : value}"`;
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (value === null || value === undefined) return 'nothing';
  return 'a block of keys';
}
