import type { Dimension } from '../dimension/dimension.ts';
import type { RefusalCode } from './refusal-codes.ts';

/** What came of reading a quantity. */
export type Reading = Quantity | Refusal;

export interface Quantity {
  readonly ok: true;
  /** SI (°C for temperatures). */
  readonly value: number;
  /** Symbol of the unit that it was written in; '1' for a plain number. */
  readonly unit: string;
  /** The number as written, in that unit. */
  readonly number: number;
}

export type Refusal =
  | RefusalOf<'empty' | 'bad-number' | 'ambiguous-number' | 'not-finite' | 'missing-unit'>
  | (RefusalOf<'unknown-unit'> & { readonly foundUnit: string; readonly nearest: string | undefined })
  | (RefusalOf<'wrong-dimension'> & { readonly foundUnit: string; readonly foundDimension: Dimension });

export interface RefusalOf<Code extends RefusalCode> {
  readonly ok: false;
  readonly code: Code;
  /** The text that was refused. */
  readonly found: string;
  readonly dimension: Dimension;
  readonly accepted: Accepted;
}

export interface Accepted {
  /** Symbols of the units that would be read. */
  readonly units: readonly string[];
  /** A text that would be read. */
  readonly example: string;
}
