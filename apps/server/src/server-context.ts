import type { Store } from '@standstill/workshop';
import type { Calculations } from './calculations/calculations.ts';

/** What the routes work with; everything that differs between a test and a day in the shop is passed in. */
export interface ServerContext {
  readonly store: Store;
  readonly calculations: Calculations;
  /** Answers the present time. */
  readonly clock: () => Date;
  /** Answers a new id each time. */
  readonly ids: () => string;
  readonly programVersion: string;
}
