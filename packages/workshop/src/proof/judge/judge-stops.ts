import type { LogReport, StopResult } from '../../results/log-report.ts';
import type { GivenJudgement } from './given-judgement.ts';
import { leftOutReason } from './left-out-reason.ts';

/** What there is to tell of a judgement that did not do what it says. */
const judgementCodes = ['judged-twice', 'judgement-without-stop', 'not-restored'] as const;

/** Stops with what a person said of them, and what a reader must know of that. */
export interface JudgedStops {
  readonly stops: readonly StopResult[];
  readonly issues: LogReport['issues'];
}

/**
 * Puts a person's judgements on the stops that they mean: each on the stop that was under way at its moment. A judgement
 * that meets no stop, or can't be followed, is told and never dropped in silence. No stop is taken away.
 *
 * @param stops - of one log
 * @param judgements - in the order given; of two on one stop the later holds
 * @returns the stops, counted or not by the judgements too; one issue for each judgement that did not do what it says
 */
export function judgeStops(stops: readonly StopResult[], judgements: readonly GivenJudgement[]): JudgedStops {
  const issues: LogReport['issues'] = [];
  const judged = stops.map((stop) => {
    const own = judgements.filter(({ at }) => isDuring(stop, at));
    const last = own.at(-1);
    if (last === undefined) return stop;
    if (own.length > 1) issues.push(issue('judged-twice', twice(stop, own)));
    const result = withJudgement(stop, last);
    const reason = leftOutReason(result);
    if (last.verdict === 'restored' && reason !== null)
      issues.push(issue('not-restored', `Stop ${stop.number} stays left out. ${reason}`));
    return result;
  });
  const astray = judgements.filter(({ at }) => !stops.some((stop) => isDuring(stop, at)));
  issues.push(...astray.map((judgement) => issue('judgement-without-stop', nowhere(judgement, stops))));
  return { stops: judged, issues };
}

function isDuring({ start_s, end_s }: StopResult, at: number): boolean {
  return at >= start_s && at <= end_s;
}

function withJudgement(stop: StopResult, { verdict, reason, by, date }: GivenJudgement): StopResult {
  const judgement = { verdict, reason, by: by ?? null, date: date ?? null };
  return { ...stop, judgement, counted: leftOutReason({ ...stop, judgement }) === null };
}

function issue(code: (typeof judgementCodes)[number], message: string): LogReport['issues'][number] {
  return { code, message, line: null, count: 1 };
}

function twice({ number }: StopResult, own: readonly GivenJudgement[]): string {
  const words = own.map(({ verdict, reason }) => `${verdict} ("${reason}")`);
  return `Stop ${number} was judged ${own.length} times: ${words.join(', then ')}. The last one holds.`;
}

function nowhere({ at, verdict, reason }: GivenJudgement, stops: readonly StopResult[]): string {
  const said = `A judgement at ${at.toFixed(1)} s (${verdict}: "${reason}") meets no stop of this log, so it changes nothing`;
  const away = (stop: StopResult): number => Math.max(stop.start_s - at, at - stop.end_s);
  const nearest = stops.toSorted((one, other) => away(one) - away(other))[0];
  if (nearest === undefined) return `${said}.`;
  const { number, start_s, end_s } = nearest;
  return `${said}; the nearest is stop ${number}, from ${start_s.toFixed(1)} to ${end_s.toFixed(1)} s.`;
}
