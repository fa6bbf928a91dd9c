/** The flexible hose of one corner. */
export interface Hose {
  /** m, free length. */
  readonly length: number;
  /** Pa, ascending pressures at which the expansion is stated (zero at zero is implied). */
  readonly pressures: readonly number[];
  /** m³ per m of length at those pressures. */
  readonly expansions: readonly number[];
}
