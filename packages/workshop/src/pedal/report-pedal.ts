import { circuitsOf } from '@standstill/braking';
import type { Circuit, SetUp } from '@standstill/braking';
import { requireRange } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import { orNone } from '../draws/or-none.ts';
import type { Job, JobPedalPoint, JobPedalTest, JobSetUp } from '../job/job.ts';
import { printFillings } from '../job/print-fillings.ts';
import type { AssumedValue } from '../results/assumed-value.ts';
import type { CircuitLostResult, MeasuredPedal, PedalReport } from '../results/pedal-report.ts';
import { central } from '../settle/draw.ts';
import type { Draw } from '../settle/draw.ts';
import { measuredPedal } from './measured/measured-pedal.ts';
import { partTitles } from './measured/part-titles.ts';
import { curvePoints, firmnessShares, hotFluidTemperature, pushCount, wearLimit } from './pedal-figures.ts';
import { reference, settlePedal } from './pedal-question.ts';
import { pedalReportWarnings } from './pedal-report-warnings.ts';
import type { PedalKinds } from './pedal-report-warnings.ts';
import { pedalSample } from './pedal-sample.ts';
import type { PedalSample } from './pedal-sample.ts';
import { pedalSentence } from './pedal-sentence.ts';

/** All SI; what is left out is as the job says. */
export interface ReportPedalOptions {
  /** Id; the car as found where absent. */
  readonly setUp?: string;
  /** N at the pedal pad. */
  readonly pedalForce?: number;
  /** m/s², deceleration at which firmness is asked too; half of g where absent. */
  readonly deceleration?: number;
  /** Pushes to look into, instead of the job's own. */
  readonly measured?: { readonly engine: JobPedalTest['engine']; readonly points: readonly JobPedalPoint[] };
  /** Draws behind the intervals; 400 where absent. */
  readonly draws?: number;
  /** Any whole number; 1 where absent. */
  readonly seed?: number;
  /** Units of the sentences; `us` where absent. */
  readonly units?: UnitSystem;
}

/**
 * Answers what the pedal of a set-up does: where its travel goes, how firm it is, what a lost circuit or assist leaves, and
 * what a measured pedal says of air and compliance.
 *
 * Assumes: central values come from the central inputs, intervals hold 95 % of the draws; a slow push, and of a measured
 * pedal the last one of the job that is on this set-up unless points are given.
 *
 * @param job - the job
 * @param options - set-up; pedal force, N; deceleration, m/s²; measured points; draws, seed; units of the sentences
 * @returns the report, SI with the unit in each key
 * @throws OutOfRangeError where what is asked is outside what the formulas are valid for
 * @throws PedalPointsError where measured points can't be used
 */
export function reportPedal(job: Job, options: ReportPedalOptions = {}): PedalReport {
  const { draws = 400, seed = 1, units = 'us', deceleration: wanted = 4.903325 } = options;
  if (options.pedalForce !== undefined) requireRange('pedal force', options.pedalForce, 'N', 5, 2000);
  requireRange('deceleration wanted', wanted, 'm/s²', 0.1, 20);
  const setUp = chosen(job, options.setUp);
  const sample = pedalSample({ job, setUp, pedalForce: options.pedalForce, wanted, draws, seed });
  const settled = settlePedal(job, setUp, central, options.pedalForce);
  const test = testOf(job, setUp, options);
  const measured = test === undefined ? null : measuredOf(job, setUp, test, sample.draws, { seed, units });
  const figures = {
    ...ofPush(sample),
    ...ofCurve(sample, settled.foot.force),
    firmness: firmnessOf(sample, settled.foot.force, wanted),
    ...ofFailures(job, setUp, settled.setUp, sample),
    measured,
  };
  const told = {
    kind: 'pedal-report',
    version: 1,
    job: job.title,
    setUp: setUp.id,
    title: setUp.title,
    pedalForce_N: settled.foot.force,
    surface: job.conditions.surface,
    draws,
    drawsLeftOut: sample.leftOut,
    seed,
    reference: referenceResult,
    ...figures,
  } as const;
  return {
    ...told,
    sentence: pedalSentence(told, units),
    warnings: pedalReportWarnings(told, kindsOf(settled.setUp, sample), units),
    assumed: [...printFillings(job.fillings, units), ...assumedHere(measured, test)],
  };
}

function kindsOf({ booster, masterCylinder }: SetUp, { central: middle }: PedalSample): PedalKinds {
  const hoseBeyondTable = middle['hoseBeyondTable'] === 1;
  return { booster: booster.kind, masterCylinder: masterCylinder.kind, hoseBeyondTable };
}

const referenceResult = {
  deceleration_m_s2: reference.deceleration,
  pedalForce_N: reference.pedalForce,
  distanceFrom100_m: reference.distance,
  source: reference.source,
};

function chosen(job: Job, id: string | undefined): JobSetUp {
  const found =
    id === undefined
      ? job.setUps.find(({ basedOn }) => basedOn === null)
      : job.setUps.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`the job has no set-up "${id ?? ''}"`);
  return found;
}

function testOf(job: Job, { id }: JobSetUp, { measured }: ReportPedalOptions): JobPedalTest | undefined {
  if (measured !== undefined) return { setUp: id, ...measured };
  return job.pedalTests.findLast((test) => test.setUp === id);
}

function measuredOf(
  job: Job,
  setUp: JobSetUp,
  test: JobPedalTest,
  draws: readonly Draw[],
  { seed, units }: { readonly seed: number; readonly units: UnitSystem },
): MeasuredPedal {
  const settled = (draw: Draw): SetUp => settlePedal(job, setUp, draw, undefined).setUp;
  const drawn = draws.map((draw) => orNone(() => settled(draw)));
  return measuredPedal({ test, central: settled(central), draws: drawn, seed, units });
}

function ofPush({
  central: middle,
  estimate,
  share,
}: PedalSample): Pick<
  PedalReport,
  'push' | 'parts' | 'knockBack_m' | 'knockBackShare' | 'hotFluid' | 'fastPush_m' | 'wornPads'
> {
  const parts = Object.keys(middle).filter((name) => name.startsWith('part.'));
  return {
    push: {
      travel_m: estimate('travel'),
      travelShare: estimate('travelShare'),
      travelLeft_m: estimate('travelLeft'),
      strokeReserve_m: estimate('strokeReserve'),
      frontLinePressure_Pa: estimate('frontPressure'),
      rearLinePressure_Pa: estimate('rearPressure'),
      bottoms: middle['bottoms'] === 1,
      bottomsShare: share('bottoms'),
    },
    parts: parts.map((name) => {
      const part = name.slice('part.'.length);
      return { part, title: partTitles[part] ?? part, travel_m: estimate(name) };
    }),
    knockBack_m: estimate('knockBack'),
    knockBackShare: estimate('knockBackShare'),
    hotFluid: { temperature_C: hotFluidTemperature, extraTravel_m: estimate('hotFluid') },
    fastPush_m: estimate('fastPush'),
    wornPads: {
      wearLimit_m: wearLimit,
      demand_m3: estimate('wearDemand'),
      reservoir_m3: estimate('reservoir'),
      emptyShare: share('reservoirEmpty'),
    },
  };
}

function ofCurve(
  { estimate, maybe }: PedalSample,
  force: number,
): Pick<PedalReport, 'curve' | 'boosterRunOut_N'> {
  return {
    curve: Array.from({ length: curvePoints }, (_, point) => ({
      pedalForce_N: (point / (curvePoints - 1)) * force,
      travel_m: estimate(`curve.${point}.travel`),
      frontLinePressure_Pa: estimate(`curve.${point}.front`),
      rearLinePressure_Pa: estimate(`curve.${point}.rear`),
    })),
    boosterRunOut_N: maybe('runOut'),
  };
}

function firmnessOf(
  { estimate, maybe }: PedalSample,
  force: number,
  wanted: number,
): PedalReport['firmness'] {
  const atForces = firmnessShares.map((share, index) => ({
    deceleration_m_s2: null,
    pedalForce_N: { value: share * force, low: share * force, high: share * force },
    firmness_N_m: estimate(`firmness.${index}`),
  }));
  const [pedalForce, firmness] = [maybe('firmness.wanted.force'), maybe('firmness.wanted')];
  if (pedalForce === null || firmness === null) return atForces;
  return [...atForces, { deceleration_m_s2: wanted, pedalForce_N: pedalForce, firmness_N_m: firmness }];
}

const circuitTitles: Readonly<Record<Circuit, string>> = {
  front: 'The front circuit',
  rear: 'The rear circuit',
  'first-diagonal': 'One diagonal',
  'second-diagonal': 'The other diagonal',
};

function ofFailures(
  job: Job,
  setUp: JobSetUp,
  settled: SetUp,
  sample: PedalSample,
): Pick<PedalReport, 'circuitsLost' | 'assistLost' | 'pushesWithoutEngine'> {
  const { central: middle, estimate, share } = sample;
  const strokesAssumed = areStrokesAssumed(job, setUp);
  return {
    circuitsLost: circuitsOf(settled).map((circuit) => ({
      circuit,
      title: circuitTitles[circuit],
      ...stateOf(sample, circuit),
      extraTravel_m: estimate(`${circuit}.extraTravel`),
      bottoms: middle[`${circuit}.bottoms`] === 1,
      bottomsShare: share(`${circuit}.bottoms`),
      strokesAssumed,
    })),
    assistLost: settled.booster.kind === 'none' ? null : stateOf(sample, 'assist'),
    pushesWithoutEngine: Number.isFinite(middle['off.0.vacuum'] ?? NaN)
      ? Array.from({ length: pushCount }, (_, push) => ({
          push: push + 1,
          vacuum_Pa: estimate(`off.${push}.vacuum`),
          frontLinePressure_Pa: estimate(`off.${push}.front`),
          travel_m: estimate(`off.${push}.travel`),
        }))
      : null,
  };
}

type State = Omit<
  CircuitLostResult,
  'circuit' | 'title' | 'extraTravel_m' | 'bottoms' | 'bottomsShare' | 'strokesAssumed'
>;

function stateOf({ central: middle, estimate, maybe, share }: PedalSample, name: string): State {
  return {
    travel_m: estimate(`${name}.travel`),
    travelLeft_m: estimate(`${name}.travelLeft`),
    pedalForceThere_N: estimate(`${name}.there`),
    frontLinePressure_Pa: estimate(`${name}.front`),
    rearLinePressure_Pa: estimate(`${name}.rear`),
    deceleration_m_s2: estimate(`${name}.deceleration`),
    distanceFrom100_m: maybe(`${name}.distance`),
    pedalForceAtReference_N: maybe(`${name}.needed`),
    fallsShort: middle[`${name}.short`] === 1,
    fallsShortShare: share(`${name}.short`),
  };
}

function areStrokesAssumed(job: Job, setUp: JobSetUp): boolean {
  const id = setUp.slots.masterCylinder;
  const part = id === null ? undefined : job.parts[id];
  if (part?.kind !== 'master-cylinder' || part.type !== 'tandem') return false;
  return part.details.primaryStroke.origin === 'assumed' && part.details.secondaryStroke.origin === 'assumed';
}

/** What the report itself takes for granted. */
function assumedHere(measured: MeasuredPedal | null, test: JobPedalTest | undefined): AssumedValue[] {
  const limit = {
    path: 'parts',
    title: 'Pads worn out at',
    text: `${1000 * wearLimit} mm of friction material`,
    reason: "common practice; the maker's figure overrides it",
  };
  if (measured === null || test === undefined) return [limit];
  const stated = test.points.some(
    ({ travel, force, linePressure }) => travel.spread > 0 || ((force ?? linePressure)?.spread ?? 0) > 0,
  );
  if (stated) return [limit];
  const gauges = {
    path: 'pedalPoints',
    title: 'Spread of the gauges',
    text: `${1000 * measured.travelSpread_m} mm of travel, ${100 * measured.forceSpreadShare} % of force`,
    reason: 'no spread is stated; a rule beside the pedal and a gauge on its pad, common practice',
  };
  return [limit, gauges];
}
