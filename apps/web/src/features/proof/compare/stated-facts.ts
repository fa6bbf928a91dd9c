import type { RunDocument } from '@standstill/workshop';

/** What changes a stop as much as brakes do, and only a person can say; the last rows only where a run states them. */
export const askedOfRuns = [
  { key: 'date', title: 'Date' },
  { key: 'tires', title: 'Tires' },
  { key: 'surface', title: 'Surface' },
  { key: 'driver', title: 'Driver' },
  { key: 'startTemperature', title: 'Rotors at the start' },
  { key: 'direction', title: 'Way', ifStated: true },
  { key: 'headWind', title: 'Head wind', ifStated: true },
  { key: 'surfaceTemperature', title: 'Road temperature', ifStated: true },
  { key: 'tireTemperature', title: 'Tire temperature', ifStated: true },
  { key: 'airTemperature', title: 'Air temperature', ifStated: true },
  { key: 'logger', title: 'Logger', ifStated: true },
  { key: 'notes', title: 'Notes', ifStated: true },
] as const satisfies readonly {
  readonly key: keyof RunDocument;
  readonly title: string;
  readonly ifStated?: true;
}[];

type Asked = (typeof askedOfRuns)[number];

export interface StatedFact {
  readonly key: Asked['key'];
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
  return askedOfRuns
    .map(({ key, title, ...asked }) => {
      const [a, b] = [said(before, key), said(after, key)];
      const all = [...a, ...b];
      const told: StatedFact['told'] = all.includes(unsaid)
        ? unsaid
        : new Set(all).size === 1
          ? 'same'
          : 'differs';
      const left = 'ifStated' in asked && all.every((word) => word === unsaid);
      return { left, fact: { key, title, before: a.join('; '), after: b.join('; '), told } };
    })
    .flatMap(({ left, fact }) => (left ? [] : [fact]));
}

function said(runs: readonly RunDocument[], key: Asked['key']): readonly string[] {
  const words = runs.map((run) => wordsOf(run[key]) || unsaid);
  return words.length === 0 ? [unsaid] : [...new Set(words)];
}

/** As it was written: a text, or a quantity with its unit. */
function wordsOf(value: RunDocument[Asked['key']]): string {
  if (typeof value === 'object') return [value.value, value.unit].filter(Boolean).join(' ');
  return value === undefined ? '' : String(value).trim();
}

/** What nobody wrote down, and so may stand behind the verdict; what differed is in the verdict itself. */
export function statedWords(facts: readonly StatedFact[]): readonly string[] {
  const open = facts.filter(({ told }) => told === unsaid).map(({ title }) => title.toLowerCase());
  return open.length === 0 ? [] : [`Not stated, so nobody knows whether it differed: ${open.join('; ')}.`];
}
