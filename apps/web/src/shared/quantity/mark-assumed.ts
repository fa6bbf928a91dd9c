import type { PartDocument } from '@standstill/workshop';

const words = new Set(['kind', 'title', 'class', 'type', 'contact', 'size', 'note']);

/** A part with every value marked as assumed: nobody has measured or stated them for this car. */
export function markAssumed(part: PartDocument): PartDocument {
  return marked(part) as PartDocument;
}

function marked(value: unknown, key = ''): unknown {
  if (words.has(key) || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map((entry) => marked(entry));
  if (typeof value !== 'object' || value === null) return { value, origin: 'assumed' };
  if ('value' in value) return { ...value, origin: 'assumed' };
  return Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, marked(entry, name)]));
}
