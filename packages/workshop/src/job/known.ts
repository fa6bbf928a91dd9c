import type { Origin } from './document/quantity-input.ts';
import type { Fact } from './facts/fact.ts';

/** One number of a job with how well it is known. */
export interface Known {
  /** SI. */
  readonly value: number;
  readonly origin: Origin;
  /** One standard deviation, SI; 0 where the value is a choice (the speed to stop from) rather than a finding. */
  readonly spread: number;
  /** Path in the job document; two set-ups that use the same part share it, and so share its draws. */
  readonly path: string;
  /** SI, least and greatest value that can be true; draws stay inside. */
  readonly low: number;
  readonly high: number;
  /** What it is a number of; for the factor of a table, what the table is of. */
  readonly fact: Fact;
}
