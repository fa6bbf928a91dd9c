/** Applied in order; each makes one kind of writing habit disappear. */
const sameAs: readonly (readonly [RegExp, string])[] = [
  [/[\s\u00a0\u2007\u2009\u202f]+/gu, ' '],
  [/[\u2010-\u2015\u2212\u207b]/gu, '-'],
  [/[″“”]|''/gu, '"'],
  [/[′‘’]/gu, "'"],
  [/[º˚]/gu, '°'],
  [/[µμ]/gu, 'u'],
  [/[·⋅•∙×*]/gu, '.'],
  [/[()[\]^]/gu, ''],
  [/ per /gu, '/'],
  [/ ?([./]) ?/gu, '$1'],
  [/° /gu, '°'],
  [/(?<=[\p{L}\d°])[ -](?=[\p{L}°])/gu, '.'],
  [/\.+\//gu, '/'],
  [/\.{2,}/gu, '.'],
  [/\.$/u, ''],
];

const raised = new Map([...'⁰¹²³⁴⁵⁶⁷⁸⁹'].map((sign, digit) => [sign, String(digit)]));

/**
 * Brings a written unit to the one form in which spellings are compared.
 *
 * Spaces, dots and hyphens between units are one thing; so are raised and plain digits, the two micro signs, straight
 * and curly marks. Brackets and a final dot are dropped. Capitals stay, because they can change the meaning.
 *
 * @param text - a unit as somebody wrote it
 * @returns the form to compare
 * @example
 * spellingKey('W/(m·K)') // => 'W/m.K'
 */
export function spellingKey(text: string): string {
  const plain = [...text.normalize('NFC').trim()].map((sign) => raised.get(sign) ?? sign).join('');
  return sameAs.reduce((key, [pattern, replacement]) => key.replace(pattern, replacement), plain).trim();
}
