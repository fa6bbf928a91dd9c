import { StoreError } from './errors/store-error.ts';

/**
 * Answers whether both engines keep a text as it is: a zero byte ends text in PostgreSQL, and half of a surrogate pair
 * has no UTF-8. An id that can't be kept is the id of nothing.
 *
 * @param text - any text
 * @returns whether it can be kept
 */
export function isStorableText(text: string): boolean {
  return !text.includes('\0') && !/\p{Surrogate}/u.test(text);
}

/**
 * Refuses text that one of the engines would change or refuse, so that both behave alike.
 *
 * @param text - what is to be kept
 * @param what - its name in the sentence, e.g. `title`
 * @returns the text
 * @throws StoreError `store-text-refused`
 */
export function storableText(text: string, what: string): string {
  if (!isStorableText(text))
    throw new StoreError('store-text-refused', `The ${what} holds a character that can't be kept.`);
  return text;
}
