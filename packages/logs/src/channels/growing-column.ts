const blockLength = 16_384;

/** A column of numbers of unknown length: grows by blocks, so that no value is copied until the end. */
export class GrowingColumn {
  readonly #full: Float64Array[] = [];
  #block = new Float64Array(blockLength);
  #used = 0;

  get length(): number {
    return this.#full.length * blockLength + this.#used;
  }

  push(value: number): void {
    if (this.#used === blockLength) {
      this.#full.push(this.#block);
      this.#block = new Float64Array(blockLength);
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
    const blocks = [...this.#full, this.#block.subarray(0, this.#used)];
    this.#full.length = 0;
    this.#block = new Float64Array(blockLength);
    this.#used = 0;
    blocks.forEach((block, index) => values.set(block, index * blockLength));
    return values;
  }
}
