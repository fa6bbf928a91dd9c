/** Records that several set-ups of a plan use, each laid out when it is first asked for. */
export class SharedRecords {
  readonly #records = new Map<string, unknown>();

  /** The record under a key; one key always holds one kind of record. */
  one<T>(key: string, layOut: () => T): T {
    if (!this.#records.has(key)) this.#records.set(key, layOut());
    return this.#records.get(key) as T;
  }
}
