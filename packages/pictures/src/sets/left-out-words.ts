import type { Comparison } from '@standstill/workshop';

type SetResult = Comparison['before'];

/** Every run that does not count or that a person judged, with the reason, a line each. */
export function leftOutWords(side: string, { leftOut, judged }: SetResult): readonly string[] {
  const verdicts = judged.map(
    ({ log, number, verdict, reason }) =>
      `${side}, stop ${number} of ${log}: ${verdict} by hand, ${reason.replace(/\.$/u, '')}.`,
  );
  const others = leftOut
    .filter(({ log, number }) => !judged.some((each) => each.log === log && each.number === number))
    .map(
      ({ log, number, reason }) =>
        `${side}, stop ${number} of ${log}: left out, ${reason.replace(/\.$/u, '')}.`,
    );
  return [...verdicts, ...others];
}
