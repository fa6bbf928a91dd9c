import type { StopJudgement } from '@standstill/workshop';

/** 'Left out by hand: a gust. (R, 2026-10-03)' */
export function judgementWords({ verdict, reason, by, date }: StopJudgement): string {
  const what = verdict === 'rejected' ? 'Left out by hand' : 'Counted by hand';
  const who = [by, date].filter((part) => part !== null).join(', ');
  return `${what}: ${reason}${who === '' ? '' : ` (${who})`}`;
}
