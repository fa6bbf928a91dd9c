/** A result as programs read it. JSON has no NaN and no infinity: they become null, as the schemas say. */
export function jsonText(result: unknown): string {
  return JSON.stringify(result, null, 2);
}
