/** Why a text is no quantity. Stable; listed in docs/errors.md. */
export const refusalCodes = [
  'empty',
  'bad-number',
  'ambiguous-number',
  'not-finite',
  'missing-unit',
  'unknown-unit',
  'wrong-dimension',
] as const;

export type RefusalCode = (typeof refusalCodes)[number];
