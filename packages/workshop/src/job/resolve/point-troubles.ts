import type { JobPedalPoint } from '../job.ts';

/** Why measured points of a pedal say nothing. */
export interface PointTrouble {
  readonly code: 'too-few-points' | 'points-not-rising' | 'points-at-one-force';
  /** Place in the list, from 0; null where it is about all of them. */
  readonly index: number | null;
  readonly found: string;
  readonly accepted: string;
}

/** Fewer cannot tell three unknowns and their scatter. */
const fewestPoints = 4;
/** m that a harder push may show less by, read off a rule (assumed). */
const ruleError = 0.002;
/** Least ratio of the hardest to the lightest push. */
const leastSpan = 1.5;

/**
 * What is wrong with measured points before anything is fitted to them.
 *
 * @param points - in the order of the test
 * @returns the troubles; none where the points can be fitted
 */
export function pointTroubles(points: readonly JobPedalPoint[]): PointTrouble[] {
  const open = points.filter(({ plugged }) => plugged.length === 0);
  if (open.length < fewestPoints) return [tooFew(open.length)];
  const loads = open.map(loadOf);
  if (Math.max(...loads) < leastSpan * Math.min(...loads)) return [oneForce(loads)];
  return points.flatMap((_, index) => notRising(points, index));
}

function loadOf({ force, linePressure }: JobPedalPoint): number {
  return (force ?? linePressure)?.value ?? NaN;
}

function tooFew(count: number): PointTrouble {
  const found = `${count} ${count === 1 ? 'point' : 'points'} with nothing plugged`;
  const accepted = `${fewestPoints} or more, from light to hard`;
  return { code: 'too-few-points', index: null, found, accepted };
}

function oneForce(loads: readonly number[]): PointTrouble {
  const ratio = Math.max(...loads) / Math.min(...loads);
  const found = `pushes that are all about as hard (the hardest is ${ratio.toFixed(2)} times the lightest)`;
  const accepted = 'pushes from light to hard, the hardest at least 1.5 times the lightest';
  return { code: 'points-at-one-force', index: null, found, accepted };
}

/** Against the push before it with the same corners plugged and read by the same gauge. */
function notRising(points: readonly JobPedalPoint[], index: number): PointTrouble[] {
  const point = points[index];
  if (point === undefined) return [];
  const before = points.slice(0, index).findLast((other) => isAlike(other, point));
  if (before === undefined) return [];
  const harder = loadOf(point) > loadOf(before);
  if (harder && point.travel.value >= before.travel.value - ruleError) return [];
  const found = harder
    ? 'less travel than at the lighter push before it'
    : 'a push that is not harder than the one before it';
  const accepted = 'points from light to hard, with travel that does not fall by more than 2 mm';
  return [{ code: 'points-not-rising', index, found, accepted }];
}

function isAlike(one: JobPedalPoint, other: JobPedalPoint): boolean {
  const sameGauge = (one.force === null) === (other.force === null);
  return sameGauge && one.plugged.toSorted().join() === other.plugged.toSorted().join();
}
