const numbers = new WeakMap<object, number>();
let last = 0;

/** A number that stays the same for one and the same object: documents are never changed in place, so it is a cheap cache key. */
export function identity(value: object): number {
  const known = numbers.get(value);
  if (known !== undefined) return known;
  numbers.set(value, ++last);
  return last;
}
