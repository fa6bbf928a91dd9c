import { intervalOf } from '../draws/interval-of.ts';
import type { JobSetUp } from '../job/job.ts';
import type { Estimate } from '../results/estimate.ts';
import type { HeatLimit, HeatStop, SetUpHeat } from '../results/heat-report.ts';
import { headroomStops, heatThings } from './heat-run.ts';
import type { HeatRun, HeatThing } from './heat-run.ts';
import { thinCourse } from './thin-course.ts';

/** All figures of one set-up, with intervals from the draws that had an answer. */
export function setUpHeat(
  { id, title }: JobSetUp,
  central: HeatRun,
  drawn: readonly HeatRun[],
): Omit<SetUpHeat, 'sentence'> {
  const estimate = (of: (run: HeatRun) => number): Estimate =>
    intervalOf(of(central), Float64Array.from(drawn, of));
  const axle = (end: 'front' | 'rear'): SetUpHeat['front'] => ({
    interface_C: estimate(({ outcome }) => outcome[end].interface),
    bulk_C: estimate(({ outcome }) => outcome[end].bulk),
    pad_C: estimate(({ outcome }) => outcome[end].pad),
    fluid_C: estimate(({ outcome }) => outcome[end].fluid),
    fluidHottestAt_s: central.outcome[end].fluidTime,
  });
  const { outcome } = central;
  if (outcome.course === undefined) throw new TypeError('the central schedule was not recorded');
  return {
    id,
    title,
    front: axle('front'),
    rear: axle('rear'),
    fluid: {
      age_s: estimate(({ setUp }) => setUp.fluid.age),
      water: estimate(({ water }) => water),
      dryBoiling_C: estimate(({ setUp }) => setUp.fluid.dryBoilingPoint),
      wetBoiling_C: estimate(({ setUp }) => setUp.fluid.wetBoilingPoint),
      boiling_C: estimate(({ boiling }) => boiling),
    },
    limits: heatThings.map((what) => limitOf(what, central, drawn)),
    last: lastOf(central, estimate),
    headroom: headroomOf(central, drawn),
    isFinished: outcome.isFinished,
    stops: outcome.stops.map(stopResult),
    course: thinCourse(outcome.course),
  };
}

function limitOf(what: HeatThing, central: HeatRun, drawn: readonly HeatRun[]): HeatLimit {
  const own = central.limits[what];
  const all = drawn.map(({ limits }) => limits[what]);
  const passing = all.filter(({ stop }) => !Number.isNaN(stop));
  const known = all.filter(({ limit }) => Number.isFinite(limit));
  const hasLimit = Number.isFinite(own.limit);
  return {
    what,
    highest_C: intervalOf(
      own.highest,
      Float64Array.from(all, ({ highest }) => highest),
    ),
    limit_C: hasLimit
      ? intervalOf(
          own.limit,
          Float64Array.from(known, ({ limit }) => limit),
        )
      : null,
    margin_K: hasLimit
      ? intervalOf(
          own.limit - own.highest,
          Float64Array.from(known, ({ limit, highest }) => limit - highest),
        )
      : null,
    passedShare: all.length === 0 ? (Number.isNaN(own.stop) ? 0 : 1) : passing.length / all.length,
    passedInStop: Number.isNaN(own.stop)
      ? null
      : intervalOf(
          own.stop,
          Float64Array.from(passing, ({ stop }) => stop),
        ),
  };
}

function lastOf(central: HeatRun, estimate: (of: (run: HeatRun) => number) => Estimate): SetUpHeat['last'] {
  if (central.outcome.stops.length === 0) return null;
  return {
    shareOfFirst: estimate(({ outcome }) => outcome.stops.at(-1)?.shareOfFirst ?? NaN),
    pedalForce_N: estimate(({ outcome }) => outcome.stops.at(-1)?.pedalForce ?? NaN),
  };
}

function headroomOf({ headroom }: HeatRun, drawn: readonly HeatRun[]): SetUpHeat['headroom'] {
  if (headroom === null) return null;
  const stops = Float64Array.from(drawn, (run) => run.headroom?.stops ?? NaN);
  return { stops: intervalOf(headroom.stops, stops), first: headroom.first, looked: headroomStops };
}

function stopResult(stop: HeatRun['outcome']['stops'][number]): HeatStop {
  const axle = (end: 'front' | 'rear'): HeatStop['front'] => ({
    bulkAtStart_C: stop[end].bulkAtStart,
    interfacePeak_C: stop[end].interfacePeak,
    padAtEnd_C: stop[end].padAtEnd,
    fluidPeak_C: stop[end].fluidPeak,
  });
  return {
    stop: stop.number,
    start_s: stop.startTime,
    from_m_s: stop.from,
    to_m_s: stop.to,
    distance_m: stop.cameToRest ? stop.distance : null,
    time_s: stop.cameToRest ? stop.time : null,
    meanDeceleration_m_s2: stop.meanDeceleration,
    pedalForce_N: stop.pedalForce,
    shareOfFirst: stop.shareOfFirst,
    isWithinReach: stop.isWithinReach,
    front: axle('front'),
    rear: axle('rear'),
  };
}
