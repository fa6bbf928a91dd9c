/** Lets a limited number of pieces of work through at once; the others wait in the order they came. */
export class Gate {
  #free: number;
  readonly #waiting: (() => void)[] = [];

  /** @param places - how many at once */
  constructor(places: number) {
    this.#free = places;
  }

  /**
   * @param work - runs when there is a place
   * @returns what the work returns
   */
  async through<Result>(work: () => Promise<Result>): Promise<Result> {
    if (this.#free > 0) this.#free -= 1;
    else await new Promise<void>((resolve) => this.#waiting.push(resolve));
    try {
      return await work();
    } finally {
      const next = this.#waiting.shift();
      if (next === undefined) this.#free += 1;
      else next();
    }
  }
}
