import { useMemo, useState } from 'react';
import { readSpeedChoices, withChoice, type SpeedChoosing } from './speed-choice.ts';

const key = 'standstill.speed-columns';

/** The choices of this device, and how to change them. */
export function useSpeedChoosing(): SpeedChoosing {
  const [choices, setChoices] = useState(() => readSpeedChoices(kept()));
  return useMemo(
    () => ({
      choices,
      choose: (sha256, choice) => {
        const next = withChoice(choices, sha256, choice);
        keep(JSON.stringify(next));
        setChoices(next);
      },
    }),
    [choices],
  );
}

function kept(): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function keep(text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Storage is blocked: the choice holds for this visit.
  }
}
