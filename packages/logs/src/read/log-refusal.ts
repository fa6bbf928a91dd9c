import type { LogRefusalCode } from '../log-codes.ts';

/** A log that can't be used at all: one sentence that says what is missing and what to do. */
export interface LogRefusal {
  readonly ok: false;
  readonly code: LogRefusalCode;
  readonly sentence: string;
}

/** @returns the refusal, its sentence beginning with the file's name */
export function refuseLog(code: LogRefusalCode, name: string, rest: string): LogRefusal {
  return { ok: false, code, sentence: `${name} ${rest}` };
}

/** @returns a list for a sentence: quoted, at most twelve */
export function quotedList(names: readonly string[]): string {
  const shown = names.slice(0, 12).map((name) => `'${name.slice(0, 60)}'`);
  const more = names.length - shown.length;
  return shown.join(', ') + (more > 0 ? ` and ${more} more` : '');
}
