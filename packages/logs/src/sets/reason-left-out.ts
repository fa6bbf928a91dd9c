import type { FoundStop, StopFlag } from '../stops/found-stop.ts';
import type { StopJudgement } from './stop-set.ts';

/** What says that the recorded speed is not the car's; no word of a person makes it so. */
const speedIsNotTheCars: ReadonlySet<StopFlag['code']> = new Set([
  'impossible-deceleration',
  'wheels-disagree',
]);

/**
 * Why a stop does not count in its set: by its flags, unless a person judged otherwise. A stop whose recorded speed can't
 * be the car's stays out, whoever restores it.
 *
 * @param stop - with its flags
 * @param judgement - what a person said of it; null or undefined where nobody did
 * @returns the reason in a sentence; null where it counts
 */
export function reasonLeftOut(
  { flags }: Pick<FoundStop, 'flags'>,
  judgement: StopJudgement | null | undefined,
): string | null {
  if (judgement?.verdict === 'rejected') return judgement.reason;
  const excluding = flags.filter(({ severity }) => severity === 'excludes');
  if (judgement?.verdict !== 'restored') return excluding[0]?.reason ?? null;
  const beyond = excluding.find(({ code }) => speedIsNotTheCars.has(code));
  return beyond === undefined
    ? null
    : `${beyond.reason} It can't be restored by hand, because the recorded speed is not the car's.`;
}
