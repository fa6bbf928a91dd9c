import { requireRange } from '@standstill/numerics';
import type { Known } from '../job/known.ts';
import { drawBlock } from './draw-block.ts';
import type { DrawBlock } from './draw-block.ts';
import type { DrawSampling } from './draw-sampling.ts';
import { drawnColumn } from './drawn-column.ts';

/** The numbers that are drawn, how often, and from which seed. */
export interface DrawTableInput {
  readonly knowns: readonly Known[];
  readonly draws: number;
  readonly seed: number;
  /** `latin-hypercube` where left out. */
  readonly sampling?: DrawSampling | undefined;
}

/**
 * The drawn values of one block at a time, number after number: as much room for a million draws as for a thousand.
 */
export class DrawTable {
  /** Value of number k in the draw at place i of its block: values[k × stride + i]. */
  readonly values: Float64Array;
  readonly stride: number;
  readonly #input: DrawTableInput;
  #block: DrawBlock = { number: -1, from: 0, to: 0 };

  /**
   * @param input - the numbers, how many draws, the seed
   * @throws OutOfRangeError where there is no draw
   */
  constructor(input: DrawTableInput) {
    requireRange('number of draws', input.draws, '', 1, 1e9);
    this.#input = input;
    const { from, to } = drawBlock(input.draws, input.draws - 1); // no block is longer than the last one
    this.stride = to - from;
    this.values = new Float64Array(input.knowns.length * this.stride);
  }

  /** The place of a draw in its block, whose values are drawn where they are not there yet. */
  turnTo(row: number): number {
    if (row < this.#block.from || row >= this.#block.to) this.#draw(drawBlock(this.#input.draws, row));
    return row - this.#block.from;
  }

  #draw(block: DrawBlock): void {
    const { knowns, seed, sampling = 'latin-hypercube' } = this.#input;
    const length = block.to - block.from;
    knowns.forEach((known, column) => {
      const start = column * this.stride;
      const dimension = sampling === 'sobol' ? column : null;
      drawnColumn({ known, block, seed, dimension }, this.values.subarray(start, start + length));
    });
    this.#block = block;
  }
}
