/** What the server asks its calculation thread. */
export interface CalculationRequest {
  readonly number: number;
  readonly kind: 'ask' | 'reportLog' | 'compare';
  readonly task: unknown;
}

/** What the thread answers; `reason` is for the log, not for the caller. */
export type CalculationAnswer =
  | { readonly number: number; readonly ok: true; readonly answer: unknown }
  | { readonly number: number; readonly ok: false; readonly reason: string };
