import { quantityKinds, toUnit, unitsOf } from '@standstill/units';
import { intervalOf } from '../../draws/interval-of.ts';
import { knownOwner } from '../../influence/known-owner.ts';
import type { Job, JobSetUp } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import type { Reconciliation } from '../../results/reconciliation.ts';
import type { StopModel } from '../model/stop-model.ts';
import { driverSharePath } from '../model/day-knowns.ts';
import type { Ensemble } from './ensemble.ts';
import type { Learned } from './learn-from-stops.ts';
import { weightedEstimate } from './weighted-estimate.ts';

type LearnedValue = Reconciliation['learned'][number];

/** Share of its spread that the stops must take off a number for it to be listed unasked. */
const leastNarrowed = 0.1;
/** Values that are listed at most. */
const most = 12;

/** A value of the job as a function of the numbers. */
interface Asked {
  readonly path: string;
  readonly title: string;
  readonly unit: string;
  readonly always: boolean;
  readonly of: (valueOf: (known: Known) => number) => number;
}

/**
 * What the stops say of the job's values: always of the tires' grip, the pads' friction and the foot, and of whatever else
 * they narrow.
 *
 * Equation: narrowed = 1 − s_learned / s_job, not below 0; grip = mean of front and rear peak friction, times the surface's factor
 *
 * @param job - the job
 * @param setUp - that was driven
 * @param model - whose numbers they are
 * @param learned - its draws
 * @returns the values, SI (°C for temperatures), what is always asked first
 */
export function learnedValues(
  job: Job,
  setUp: JobSetUp,
  model: StopModel,
  learned: Learned,
): readonly LearnedValue[] {
  const always = [gripOf(job, setUp), ...padsOf(job, setUp, model.knowns), ...byFoot(model.knowns)];
  const named = new Set(always.map(({ path }) => path));
  const others = learned.plane.acting
    .map((k) => model.knowns[k]!)
    .filter(({ path }) => !named.has(path))
    .map((known) => askedOf(job, known, false));
  const rows = [...always, ...others].map((asked) => ({ asked, row: rowOf(asked, model, learned) }));
  const told = rows
    .filter(({ asked, row }) => !asked.always && row.narrowed >= leastNarrowed)
    .toSorted((a, b) => b.row.narrowed - a.row.narrowed);
  return [...rows.filter(({ asked }) => asked.always), ...told].slice(0, most).map(({ row }) => row);
}

function gripOf({ conditions, parts }: Job, { slots }: JobSetUp): Asked {
  const surface = conditions.facts.surfaceFactor;
  const peaks = [slots.frontTire, slots.rearTire].flatMap((id) => {
    const part = id === null ? undefined : parts[id];
    return part?.kind === 'tire' ? [part.facts.peakFriction] : [];
  });
  return {
    path: 'tires.grip',
    title: 'Grip of the tires on this surface',
    unit: '',
    always: true,
    of: (valueOf) => (peaks.reduce((sum, peak) => sum + valueOf(peak), 0) / peaks.length) * valueOf(surface),
  };
}

function padsOf(job: Job, { slots }: JobSetUp, knowns: readonly Known[]): Asked[] {
  const ids = new Set([slots.frontPad, slots.rearPad, slots.rearDrum]);
  const paths = new Set(
    [...ids].flatMap((id) => {
      const part = id === null ? undefined : job.parts[id];
      return part?.kind === 'pad' || part?.kind === 'drum' ? [part.friction.factor.path] : [];
    }),
  );
  return knowns.filter(({ path }) => paths.has(path)).map((known) => askedOf(job, known, true));
}

const footPaths: ReadonlySet<string> = new Set([
  'conditions.pedalForce',
  'conditions.pedalRamp',
  driverSharePath,
]);

function byFoot(knowns: readonly Known[]): Asked[] {
  return knowns
    .filter(({ path }) => footPaths.has(path))
    .map((known) => ({ ...plain(known), title: known.fact.title, always: true }));
}

function askedOf(job: Job, known: Known, always: boolean): Asked {
  const isFactor = known.fact.kind === 'ratio' && known.value === 1 && known.path.endsWith('.friction');
  const what = isFactor ? `${known.fact.title}, over the table's` : known.fact.title;
  return { ...plain(known), title: `${what}, ${knownOwner(job, known.path).words}`, always };
}

function plain(known: Known): Pick<Asked, 'path' | 'unit' | 'of'> {
  return { path: known.path, unit: unitOf(known.fact.kind), of: (valueOf) => valueOf(known) };
}

/** The unit that a number of this kind has in results; none for numbers of one. */
function unitOf(kind: Known['fact']['kind']): string {
  const { dimension } = quantityKinds[kind];
  if (dimension === 'ratio') return '';
  const isOurs = (unit: string): boolean => [1, 2].every((value) => toUnit(value, unit, dimension) === value);
  return unitsOf(dimension).find(isOurs) ?? '';
}

function rowOf(asked: Asked, model: StopModel, learned: Learned): LearnedValue {
  const places = new Map(model.knowns.map(({ path }, k) => [path, k]));
  const column = ({ draws, departures }: Ensemble): Float64Array =>
    Float64Array.from({ length: draws }, (_, i) =>
      asked.of((known) => {
        const k = places.get(known.path);
        return k === undefined
          ? known.value
          : departed(model.knowns[k]!, departures[i * model.knowns.length + k]!);
      }),
    );
  const drawn = column(learned.byJob);
  const all = column(learned.ensemble);
  const central = asked.of((known) => model.knowns[places.get(known.path) ?? -1]?.value ?? known.value);
  const spread = spreadOf(drawn, new Float64Array(drawn.length).fill(1 / drawn.length));
  const { path, title, unit } = asked;
  return {
    path,
    title,
    unit,
    byJob: intervalOf(central, drawn),
    learned: weightedEstimate(all, learned.weights),
    narrowed: spread > 0 ? Math.max(0, 1 - spreadOf(all, learned.weights) / spread) : 0,
  };
}

function departed({ value, spread, low, high }: Known, departure: number): number {
  return Math.max(low, Math.min(high, value + spread * departure));
}

function spreadOf(values: Float64Array, weights: Float64Array): number {
  const middle = values.reduce((sum, value, i) => sum + weights[i]! * value, 0);
  return Math.sqrt(values.reduce((sum, value, i) => sum + weights[i]! * (value - middle) ** 2, 0));
}
