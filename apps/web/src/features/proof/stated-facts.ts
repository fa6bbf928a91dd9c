import type { RunDocument } from '@standstill/workshop';

/** What changes a stop as much as brakes do, and only a person can say. */
export const askedOfRuns = [
  { key: 'date', title: 'Date' },
  { key: 'tires', title: 'Tires' },
  { key: 'surface', title: 'Surface' },
  { key: 'notes', title: 'Driver, rotor temperature, weather' },
] as const;

export interface StatedFact {
  readonly title: string;
  readonly before: string;
  readonly after: string;
  /** By the words of the runs; what one log does not state is not known to be alike. */
  readonly told: 'same' | 'differs' | 'not stated';
}

const unsaid = 'not stated';

/** What the runs of both sets say of themselves, side by side. */
export function statedFacts(
  before: readonly RunDocument[],
  after: readonly RunDocument[],
): readonly StatedFact[] {
  return askedOfRuns.map(({ key, title }) => {
    const [a, b] = [said(before, key), said(after, key)];
    const all = [...a, ...b];
    const told = all.includes(unsaid) ? unsaid : new Set(all).size === 1 ? 'same' : 'differs';
    return { title, before: a.join('; '), after: b.join('; '), told };
  });
}

function said(runs: readonly RunDocument[], key: (typeof askedOfRuns)[number]['key']): readonly string[] {
  const words = runs.map((run) => run[key]?.trim() || unsaid);
  return words.length === 0 ? [unsaid] : [...new Set(words)];
}

/** What stands behind the verdict: what differed beside the parts, and what nobody wrote down. */
export function statedWords(facts: readonly StatedFact[]): readonly string[] {
  const titles = (told: StatedFact['told']) =>
    facts.filter((fact) => fact.told === told).map(({ title }) => title.toLowerCase());
  const [differs, open] = [titles('differs'), titles('not stated')];
  return [
    ...(differs.length > 0
      ? [`Also different, and not to be told from the parts: ${differs.join('; ')}.`]
      : []),
    ...(open.length > 0 ? [`Not stated, so nobody knows whether it differed: ${open.join('; ')}.`] : []),
  ];
}
