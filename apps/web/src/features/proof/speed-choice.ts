import { unitsOf } from '@standstill/units';
import { createContext } from 'react';

/** A person's word on which column of a log is the speed, and its unit; it overrules the guess. */
export interface SpeedChoice {
  readonly name: string;
  readonly unit: string;
}

/** By checksum of the log: the same file is read the same way wherever it is used. */
export type SpeedChoices = Readonly<Record<string, SpeedChoice>>;

export interface SpeedChoosing {
  readonly choices: SpeedChoices;
  /** Null goes back to the guess. */
  readonly choose: (sha256: string, choice: SpeedChoice | null) => void;
}

export const SpeedChoosingContext = createContext<SpeedChoosing>({ choices: {}, choose: () => {} });

export const speedUnits = unitsOf('speed');

/** The choices kept on this device; anything that can't be read counts as none. */
export function readSpeedChoices(text: string | null): SpeedChoices {
  try {
    const kept = JSON.parse(text ?? '{}') as unknown;
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([, choice]) => isChoice(choice))) as SpeedChoices;
  } catch {
    return {};
  }
}

function isChoice(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { name, unit } = value as Partial<SpeedChoice>;
  return typeof name === 'string' && name !== '' && typeof unit === 'string' && speedUnits.includes(unit);
}

/** With one choice more, or taken back. */
export function withChoice(choices: SpeedChoices, sha256: string, choice: SpeedChoice | null): SpeedChoices {
  const { [sha256]: _before, ...others } = choices;
  return choice === null ? others : { ...others, [sha256]: choice };
}
