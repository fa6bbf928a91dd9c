/**
 * A set-up's title as the subject of a sentence: `Front kit` becomes `The front kit`; what reads badly so is quoted.
 *
 * @param title - as the person wrote it
 * @returns the subject, to start a sentence with
 */
export function nameInSentence(title: string): string {
  const plain = /^[A-Z][a-z-]+(?: [A-Za-z0-9-]+){0,5}$/.test(title);
  return plain ? `The ${title.charAt(0).toLowerCase()}${title.slice(1)}` : `"${title}"`;
}
