export function jobJsonSchema(): Record<string, unknown> {
  throw new Error('not written yet');
}
