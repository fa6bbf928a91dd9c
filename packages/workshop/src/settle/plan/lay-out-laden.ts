import type { Car } from '@standstill/braking';
import type { Job } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { settleLaden } from '../settle-laden.ts';
import type { Refill } from './refill.ts';

interface LayOutLadenInput {
  readonly job: Job;
  /** As tested, laid out before. */
  readonly car: Car;
  /** With the central values. */
  readonly fresh: Car;
  readonly refill: Refill;
}

/** Puts the laden car down for refilling: it follows from the car as tested and its load. */
export function layOutLaden({ job, car, fresh, refill }: LayOutLadenInput): Car {
  const { laden, facts } = job.car;
  const own: readonly Known[] = Object.values(laden).map(({ known }) => known);
  const drawn: Record<string, number> = {};
  for (const known of own) refill.take(known, drawn, known.path);
  refill.workOut([...own, ...Object.values(facts)], () => {
    Object.assign(
      fresh,
      settleLaden(laden, car, ({ path, value }) => drawn[path] ?? value),
    );
  });
  return fresh;
}
