import type { Estimate } from '../results/estimate.ts';
import type { Warning } from '../results/warning.ts';
import { percent } from '../words/percent.ts';
import type { Speaker } from '../words/speaker.ts';

interface FluidWarningInput {
  readonly id: string;
  readonly title: string;
  /** °C, hottest fluid of the hotter axle and its boiling point today. */
  readonly highest: Estimate;
  readonly boiling: number;
  /** Share of the draws in which it boils, 0 to 1. */
  readonly boilsShare: number;
  /** `in the repeated stops or while the car stands after them`. */
  readonly when: string;
}

/** Share of the draws from which boiling fluid is a danger, and from which it is worth a word (assumed). */
export const boilingShares = { danger: 0.05, word: 0.005 } as const;

/** What is to be said where fluid boils or may boil; null where it stays well below. */
export function fluidWarning(input: FluidWarningInput, say: Speaker): Warning | null {
  const { id, title, highest, boiling, boilsShare, when } = input;
  const [at, limit] = [highest.value, boiling].map((value) => say.rounded(value, 'temperature', 2));
  const range = say.range(highest.low, highest.high, 'temperature');
  const figures = `reaches ${at} (${range}) ${when}, and boils at ${limit} at its age`;
  const floor = 'the pedal then goes to the floor without braking';
  if (highest.value > boiling) {
    const message = `${title}: the fluid ${figures}: ${floor}. Do not drive it like this; change the fluid, and less heat or better cooling is needed.`;
    return { code: 'fluid-boils', severity: 'danger', about: id, message };
  }
  if (boilsShare < boilingShares.word) return null;
  const severity = boilsShare >= boilingShares.danger ? 'danger' : 'caution';
  const message = `${title}: the fluid ${figures}. In ${percent(boilsShare)} of the draws it boils, and ${floor}. Fresh fluid of a known class narrows this; its path of heat is from class values.`;
  return { code: 'fluid-may-boil', severity, about: id, message };
}
