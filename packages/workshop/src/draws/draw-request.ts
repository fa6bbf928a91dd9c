import type { Overrides } from '../settle/settle.ts';
import type { DrawSampling } from './draw-sampling.ts';
import type { DrawQuestionName } from './questions/draw-questions.ts';

/** What is drawn: which question of which set-ups, how often. Plain data, the same for every range of it. */
export interface DrawRequest {
  readonly question: DrawQuestionName;
  /** Draw i of one set-up belongs to draw i of every other. */
  readonly setUpIds: readonly string[];
  readonly overrides: Overrides;
  /** In all, not only in the range. */
  readonly draws: number;
  readonly seed: number;
  /** `latin-hypercube` where left out. */
  readonly sampling?: DrawSampling | undefined;
}
