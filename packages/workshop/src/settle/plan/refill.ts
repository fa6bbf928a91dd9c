import type { KnownFacts } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';

/** A record or list whose numbers are written anew for every draw. */
type Writable = Record<string | number, number>;

/**
 * Where the drawn values of a job go: which field of which record takes which number, and what is worked out again from
 * them. Laid out once, filled for every draw.
 *
 * Allocates nothing in `fill`.
 */
export class Refill {
  readonly #columns: ReadonlyMap<string, number>;
  readonly #records: Writable[] = [];
  readonly #fields: (string | number)[] = [];
  readonly #sources: number[] = [];
  readonly #workings: (() => void)[] = [];

  /** @param knowns - the numbers that are drawn, in the order of their columns */
  constructor(knowns: readonly Known[]) {
    this.#columns = new Map(knowns.map(({ path }, column) => [path, column]));
  }

  /** Lets a field of a record take a number; one that is not drawn stays what it is. */
  take(known: Known, record: object, field: string | number): void {
    const column = this.#columns.get(known.path);
    if (column === undefined) return;
    this.#records.push(record as Writable);
    this.#fields.push(field);
    this.#sources.push(column);
  }

  /** The same for all facts that a record has under the same names. */
  takeFacts<F extends object>(facts: KnownFacts<F>, record: { readonly [K in keyof F]: number }): void {
    for (const field of Object.keys(facts) as (keyof F & string)[]) this.take(facts[field], record, field);
  }

  /** Works something out again after every draw, unless nothing that it follows from is drawn. */
  workOut(from: readonly Known[], again: () => void): void {
    if (from.some(({ path }) => this.#columns.has(path))) this.#workings.push(again);
  }

  /** Writes one draw everywhere: number k stands at values[k × stride + place]. */
  fill(values: Float64Array, stride: number, place: number): void {
    const records = this.#records;
    const fields = this.#fields;
    const sources = this.#sources;
    for (let i = 0; i < records.length; i += 1)
      records[i]![fields[i]!] = values[sources[i]! * stride + place]!;
    for (const again of this.#workings) again();
  }
}
