import type { Difference, DifferenceKey } from './difference.ts';

/** Kinds by how their texts begin. */
const kinds: readonly (readonly [begins: RegExp, key: DifferenceKey])[] = [
  [/^tires\b/i, 'tires'],
  [/^surface\b/i, 'surface'],
  [/^(?:date|different days)\b/i, 'date'],
  [/^driver\b/i, 'driver'],
  [/^direction\b/i, 'direction'],
  [/^logger\b/i, 'logger'],
  [/^head wind\b/i, 'headWind'],
];

/** Differences that a person gives as texts, each with its kind by how it begins. */
export function givenDifferences(texts: readonly string[]): readonly Difference[] {
  return texts.map((text) => ({
    key: kinds.find(([begins]) => begins.test(text))?.[1] ?? 'stated',
    text,
    isGiven: true,
  }));
}
