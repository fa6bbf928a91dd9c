import { basename } from 'node:path';
import type { StopResult } from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

/** A person's word on one stop, as typed: `2: gust of wind`, or `before.csv 2: gust of wind` among several logs. */
export interface JudgementWord {
  readonly verdict: 'rejected' | 'restored';
  readonly log: string | null;
  readonly number: number;
  readonly reason: string;
}

const options = { rejected: '--reject', restored: '--restore' } as const;

/** Reads `--reject` or `--restore`; refuses in one line what has no number or no reason. */
export function readJudgementWord(verdict: JudgementWord['verdict'], text: string): JudgementWord {
  const [, log = '', number = '', reason = ''] =
    /^(?:(.*\S)\s+)?(\d{1,6})\s*:\s*(\S.*)$/su.exec(text.trim()) ?? [];
  if (reason === '')
    throw new CommandError(
      `${options[verdict]}: "${text}" is not a stop's number with a reason; e.g. ${options[verdict]} "2: gust of wind".`,
      exitCode.usage,
    );
  return { verdict, log: log === '' ? null : log, number: Number(number), reason: reason.trim() };
}

/** Refuses words that could mean several logs or mean none. */
export function requireMeant(words: readonly JudgementWord[], files: readonly string[]): void {
  for (const word of words) {
    const meant = files.filter((file) => isMeant(word, file));
    if (meant.length === 1) continue;
    const names = [...new Set(files.map((file) => basename(file)))];
    throw new CommandError(
      `${options[word.verdict]}: say of which log stop ${word.number} is, as "${names[0] ?? 'log.csv'} ${word.number}: …"; the logs are ${names.join(', ')}.`,
      exitCode.usage,
    );
  }
}

/** Whether a word is about this log. */
export function isMeant({ log }: JudgementWord, file: string): boolean {
  return log === null || log === file || log === basename(file);
}

/** The moment that stands for a stop in a judgement, s on the log's time base. */
export function momentOf(word: JudgementWord, file: string, stops: readonly StopResult[]): number {
  const stop = stops.find(({ number }) => number === word.number);
  if (stop !== undefined) return (stop.start_s + stop.end_s) / 2;
  const there = stops.length === 0 ? 'it has none' : `it has 1 to ${stops.length}`;
  throw new CommandError(
    `${options[word.verdict]}: ${basename(file)} has no stop ${word.number}; ${there}.`,
    exitCode.usage,
  );
}
