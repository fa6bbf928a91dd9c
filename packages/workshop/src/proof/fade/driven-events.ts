import { usualRegain } from '@standstill/braking';
import type { Foot, ScheduleEvent } from '@standstill/braking';
import type { DrivenStop } from './driven-stop.ts';

/**
 * The stops as driven: each from its own speed, after the rest that there was. A stop that does not count, such as one in
 * traffic, only warms the brakes as it did.
 */
export function drivenEvents(stops: readonly DrivenStop[], foot: Foot): readonly ScheduleEvent[] {
  return stops.flatMap(
    ({ entrySpeed, interval, deceleration, isCounted }, index): readonly ScheduleEvent[] => {
      const stop: ScheduleEvent = isCounted
        ? { kind: 'stop', from: entrySpeed, foot }
        : { kind: 'slow', from: entrySpeed, to: 0, deceleration };
      if (index === 0) return [stop];
      return [{ kind: 'regain', to: entrySpeed, rate: usualRegain, interval }, stop];
    },
  );
}
