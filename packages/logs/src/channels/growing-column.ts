const firstLength = 64;
const longestBlock = 16_384;

/**
 * A column of numbers of unknown length: grows by blocks, so that no value is copied until the end. The first blocks are
 * short, because a log may hold hundreds of signals that hardly ever speak.
 */
export class GrowingColumn {
  readonly #full: Float64Array[] = [];
  #before = 0;
  #block = new Float64Array(firstLength);
  #used = 0;

  get length(): number {
    return this.#before + this.#used;
  }

  push(value: number): void {
    if (this.#used === this.#block.length) {
      this.#full.push(this.#block);
      this.#before += this.#used;
      this.#block = new Float64Array(Math.min(longestBlock, this.#used * 2));
      this.#used = 0;
    }
    this.#block[this.#used] = value;
    this.#used += 1;
  }

  /** The last pushed value. */
  last(): number {
    return this.#used === 0 ? NaN : this.#block[this.#used - 1]!;
  }

  /** All values in one array. The column is empty afterwards, so that its blocks can be freed one by one. */
  finish(): Float64Array {
    const values = new Float64Array(this.length);
    let at = 0;
    for (const block of [...this.#full, this.#block.subarray(0, this.#used)]) {
      values.set(block, at);
      at += block.length;
    }
    this.#full.length = 0;
    this.#before = 0;
    this.#block = new Float64Array(firstLength);
    this.#used = 0;
    return values;
  }
}
