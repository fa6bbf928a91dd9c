/** A job to look at on the first day, with the bytes of its logs. */
export interface Demo {
  /** The job document as values, e.g. parsed from YAML. */
  readonly document: unknown;
  readonly logs: readonly { readonly name: string; readonly bytes: Uint8Array }[];
}
