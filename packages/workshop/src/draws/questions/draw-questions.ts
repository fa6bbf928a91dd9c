import { balanceFigures } from '../../balance/balance-figures.ts';
import { figureNames } from '../../predict/figures.ts';

/** What is asked of every draw of every set-up. */
export interface DrawQuestion {
  /** Name of each figure, in the order of the answer. */
  readonly figures: readonly string[];
  /** Draws that a worker is handed at once: enough to be worth the way, few enough to be called off soon. */
  readonly rangeLength: number;
}

/** Every question that can be asked of draws, by the name that travels to a worker; `openAnswer` knows how each is answered. */
export const drawQuestions = {
  /** Everything that a prediction says of a set-up. */
  prediction: { figures: figureNames, rangeLength: 25 },
  /** How far the car goes from the first touch of the pedal to rest, m, by the quick stop. */
  distance: { figures: ['distance'], rangeLength: 1000 },
  /** The same by the full stop, with every wheel's slip. */
  'full-distance': { figures: ['distance'], rangeLength: 50 },
  /** Everything that a balance report says of a set-up. */
  balance: { figures: balanceFigures, rangeLength: 50 },
} as const satisfies Readonly<Record<string, DrawQuestion>>;

export type DrawQuestionName = keyof typeof drawQuestions;
