import type { Warning } from '@standstill/workshop';

const names: Readonly<Record<string, string>> = {
  'rear-locks-first': 'rear locks first',
  'rear-locks-first-hot': 'rear locks first when hot',
  'rear-may-lock-first': 'rear may lock first',
  'pedal-bottoms': 'pedal reaches the floor',
  'pedal-may-bottom': 'pedal may reach the floor',
  'car-does-not-stop': 'does not come to rest',
  'rotor-beyond-computing': 'too hot to compute',
  'car-may-not-stop': 'may not come to rest',
};

/** The dangers of a set-up in a few words each; a danger without a short name sends to its long words. */
export function dangerWords(warnings: readonly Warning[], setUp: string): readonly string[] {
  const dangers = warnings.filter(({ about, severity }) => about === setUp && severity === 'danger');
  return [...new Set(dangers.map(({ code }) => names[code] ?? 'see above'))];
}

/** Ids with the dangerous ones first, else in their order. */
export function dangersFirst<T extends { readonly id: string }>(
  setUps: readonly T[],
  warnings: readonly Warning[],
): readonly T[] {
  const [bad, good]: [T[], T[]] = [[], []];
  for (const setUp of setUps) (dangerWords(warnings, setUp.id).length > 0 ? bad : good).push(setUp);
  return [...bad, ...good];
}
