import type { Problem } from '@standstill/workshop';

/** An answer that stands on kept logs, with its picture where one was asked for and there is something to draw. */
export type ProofAnswer<Answer> =
  | { readonly ok: true; readonly answer: Answer; readonly picture: string | null }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly about: 'job' | 'logs' };
