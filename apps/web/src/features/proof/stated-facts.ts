import type { RunDocument } from '@standstill/workshop';

/** What changes a stop as much as brakes do, and only a person can say. */
export const askedOfRuns = [
  { key: 'date', title: 'Date' },
  { key: 'tires', title: 'Tires' },
  { key: 'surface', title: 'Surface' },
  { key: 'notes', title: 'Driver, rotor temperature, weather' },
] as const;

export interface StatedFact {
  readonly key: (typeof askedOfRuns)[number]['key'];
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
    return { key, title, before: a.join('; '), after: b.join('; '), told };
  });
}

function said(runs: readonly RunDocument[], key: (typeof askedOfRuns)[number]['key']): readonly string[] {
  const words = runs.map((run) => run[key]?.trim() || unsaid);
  return words.length === 0 ? [unsaid] : [...new Set(words)];
}

/** What nobody wrote down, and so may stand behind the verdict; what differed is in the verdict itself. */
export function statedWords(facts: readonly StatedFact[]): readonly string[] {
  const open = facts.filter(({ told }) => told === unsaid).map(({ title }) => title.toLowerCase());
  return open.length === 0 ? [] : [`Not stated, so nobody knows whether it differed: ${open.join('; ')}.`];
}
