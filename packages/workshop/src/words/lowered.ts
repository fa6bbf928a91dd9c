/** A title inside a sentence: `Front kit` becomes `front kit`, `ABS cycling` stays. */
export function lowered(title: string): string {
  return /^[A-Z][a-z-]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}
