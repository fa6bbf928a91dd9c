import type { ColumnRole } from './guess-quantity.ts';

/** A person's word on one column; it overrules every guess. */
export interface ColumnChoice {
  /** The heading, or 'column 3' in a file without headings. */
  readonly name: string;
  /** Unit of the numbers; the heading's where absent. */
  readonly unit?: string;
  /** Multiplies the numbers before the unit is applied: a full scale for numbers from 0 to 1. 1 where absent. */
  readonly scale?: number;
  /** Set where the person is not sure: results are then marked as resting on an assumed scale. */
  readonly assumed?: boolean;
}

/** Which column is what; several for roles that a car has several of, such as wheel speeds. */
export type ColumnChoices = {
  readonly [role in Exclude<ColumnRole, 'unknown'>]?: ColumnChoice | readonly ColumnChoice[];
};

/** The choices one by one, each with its role. */
export function listedChoices(choices: ColumnChoices): readonly (readonly [ColumnRole, ColumnChoice])[] {
  return Object.entries(choices).flatMap(([role, choice]) =>
    (Array.isArray(choice) ? choice : [choice]).map(
      (one: ColumnChoice) => [role as ColumnRole, one] as const,
    ),
  );
}
