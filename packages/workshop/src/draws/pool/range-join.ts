import type { DrawRequest } from '../draw-request.ts';
import type { DrawnRange, DrawTroubles } from '../drawn-range.ts';
import { drawQuestions } from '../questions/draw-questions.ts';

/** What went wrong so far in one set-up, and from which draw on the range began that the refusal is of. */
interface Tally {
  noRest: number;
  outOfRange: number;
  refusal: string | null;
  refusedFrom: number;
}

/** Puts the ranges of a request together as they come in, in any order. */
export class RangeJoin {
  readonly #draws: number;
  readonly #figures: number;
  readonly #bySetUp: readonly Float64Array[];
  readonly #tallies: readonly Tally[];
  #dropped = 0;

  /** @param request - what is drawn */
  constructor({ question, setUpIds, draws }: DrawRequest) {
    this.#draws = draws;
    this.#figures = drawQuestions[question].figures.length;
    this.#bySetUp = setUpIds.map(() => new Float64Array(this.#figures * draws).fill(NaN));
    this.#tallies = setUpIds.map(() => ({ noRest: 0, outOfRange: 0, refusal: null, refusedFrom: Infinity }));
  }

  /** Takes one range in. */
  add({ from, to, bySetUp, troubles, dropped }: DrawnRange): void {
    const length = to - from;
    bySetUp.forEach((figures, index) => {
      const into = this.#bySetUp[index]!;
      for (let k = 0; k < this.#figures; k += 1)
        into.set(figures.subarray(k * length, (k + 1) * length), k * this.#draws + from);
    });
    troubles.forEach((trouble, index) => this.#count(this.#tallies[index]!, trouble, from));
    this.#dropped += dropped;
  }

  #count(tally: Tally, trouble: DrawTroubles, from: number): void {
    tally.noRest += trouble.noRest;
    tally.outOfRange += trouble.outOfRange;
    if (trouble.refusal === null || from > tally.refusedFrom) return;
    tally.refusal = trouble.refusal;
    tally.refusedFrom = from;
  }

  /** All ranges as one. */
  whole(): DrawnRange {
    const troubles = this.#tallies.map(({ noRest, outOfRange, refusal }) => ({
      noRest,
      outOfRange,
      refusal,
    }));
    return { from: 0, to: this.#draws, bySetUp: this.#bySetUp, troubles, dropped: this.#dropped };
  }
}
