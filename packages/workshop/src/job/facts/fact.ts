import type { QuantityKind } from '@standstill/units';

/** What one quantity of the job document is: the schema, the checks, the defaults and the docs all read it from here. */
export interface Fact {
  /** As a person calls it. */
  readonly title: string;
  /** What units it is read and printed in. */
  readonly kind: QuantityKind;
  /** Least and greatest value that can be true, SI. */
  readonly low: number;
  readonly high: number;
  /** As a person would write it; shown in errors and in the JSON Schema. */
  readonly example: string;
  /** Only what nobody can assume for another car is required. */
  readonly required?: true;
  /** Row of the table of default spreads. */
  readonly spread: SpreadKind;
}

export type SpreadKind =
  'chosen' | 'size' | 'mass' | 'share' | 'property' | 'friction' | 'compliance' | 'temperature';

export type Facts = Readonly<Record<string, Fact>>;
