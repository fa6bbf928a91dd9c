import type { Dimension } from '../dimension/dimension.ts';
import { dimensions } from '../dimension/dimensions.ts';
import type { Unit } from './unit.ts';
import { unitTable } from './unit-table.ts';

/** Every unit with its dimension, for tests that go through all of them. */
export const everyUnit: readonly { readonly dimension: Dimension; readonly unit: Unit }[] =
  dimensions.flatMap((dimension) => unitTable[dimension].map((unit) => ({ dimension, unit })));
