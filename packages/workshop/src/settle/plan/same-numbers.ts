/** Whether two values made of plain records, lists, texts and numbers are the same, bit by bit. */
export function sameNumbers(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || one === null || typeof other !== 'object' || other === null)
    return Object.is(one, other);
  const keys = Object.keys(one);
  if (keys.length !== Object.keys(other).length) return false;
  return keys.every((key) => sameNumbers(fieldOf(one, key), fieldOf(other, key)));
}

function fieldOf(record: object, key: string): unknown {
  return (record as Readonly<Record<string, unknown>>)[key];
}
