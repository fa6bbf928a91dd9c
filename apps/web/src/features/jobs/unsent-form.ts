import type { FirstFactTexts } from './first-facts.ts';

const key = 'standstill.new-job';
const empty: FirstFactTexts = { title: '', carName: '', tireSize: '', facts: {} };

/** What was typed into the form of a new job and not sent: a reload or a dead battery loses nothing. */
export function readUnsent(): FirstFactTexts {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null') as Partial<FirstFactTexts> | null;
    return { ...empty, ...kept, facts: { ...kept?.facts } };
  } catch {
    return empty;
  }
}

export function keepUnsent(texts: object): void {
  try {
    localStorage.setItem(key, JSON.stringify(texts));
  } catch {
    // Storage is blocked: the form works on without a net.
  }
}

export function dropUnsent(): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // Nothing was kept.
  }
}
