import type { Calculations } from './calculations.ts';

/** What the server asks its calculation thread. */
export interface CalculationRequest {
  readonly number: number;
  readonly kind: Exclude<keyof Calculations, 'close'>;
  readonly task: unknown;
}

/** What the thread answers; `reason` is for the log, not for the caller. */
export type CalculationAnswer =
  | { readonly number: number; readonly ok: true; readonly answer: unknown }
  | { readonly number: number; readonly ok: false; readonly reason: string };
