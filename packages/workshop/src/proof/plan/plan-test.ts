import { planRuns, runOrder, shownByRuns } from '@standstill/logs';
import type { PlannedSpread, RunsPlan } from '@standstill/logs';
import { requireRange } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import type { Job } from '../../job/job.ts';
import type { TestPlan } from '../../results/test-plan.ts';
import { speaker } from '../../words/speaker.ts';
import { nominalSpeedOf } from '../nominal-speed-of.ts';
import type { RunSet } from '../sets/run-set.ts';
import { conditionsToWriteDown } from './conditions-to-write-down.ts';
import { measuredSpread } from './measured-spread.ts';
import type { MeasuredSpread } from './measured-spread.ts';
import { planCautions } from './plan-cautions.ts';
import { planSentence } from './plan-sentence.ts';
import { planSteps } from './plan-steps.ts';
import { planWarnings } from './plan-warnings.ts';
import { plannedCoolDown } from './planned-cool-down.ts';
import type { PlannedCoolDown } from './planned-cool-down.ts';
import {
  assumedDeceleration,
  assumedScatter,
  fewestWarmUps,
  mostRuns,
  usualResolution,
  usualWindow,
} from './test-practice.ts';

export interface PlanTestInput {
  /** The job whose set-ups are tested: gives speed, window, heat and what the test should show. */
  readonly job?: Job;
  /** Ids before and after; the car as found and all others where absent. */
  readonly setUps?: readonly string[];
  /** m, the difference that should show; the job's where absent, else 3 ft. */
  readonly resolution?: number;
  /** m, standard deviation of single stops as somebody states it; comes before what was measured. */
  readonly spread?: number;
  /** Earlier stops of this car, one set for each set-up: how far they scatter. */
  readonly measured?: readonly RunSet[];
  /** m/s; that of the stops or the job where absent, else 60 mph. */
  readonly nominalSpeed?: number;
  /** °C of the hottest rotor at the start of a stop; the job's where absent, else 65 to 100 °C. */
  readonly startTemperature?: { readonly low: number; readonly high: number };
  /** Chance to see the difference, 1; 0.8 where absent. */
  readonly power?: number;
  /** Chance of a false alarm, 1; 0.05 where absent. */
  readonly level?: number;
  /** Whether the old set-up is driven once more after the new one; true where absent. */
  readonly withRepeat?: boolean;
  /** Draws behind the cool-down's interval; 20 where absent. */
  readonly draws?: number;
  readonly seed?: number;
  readonly units?: UnitSystem;
}

/**
 * Plans a test before it is driven: how many stops, in which order and direction, warm-ups, how long the brakes cool in
 * between, what to write down, and what must be safe first.
 *
 * Assumes: as `planRuns` and `coolDownOf`; numbers of `test-practice` where nobody states one, each said to be assumed.
 *
 * @param input - difference to be seen, m; spread, m; speed, m/s; window, °C; job, set-ups; chances, 1
 * @returns the plan, m, s, °C and min
 * @throws OutOfRangeError where a number can't be
 */
export function planTest(input: PlanTestInput): TestPlan {
  const { withRepeat = true, units = 'us' } = input;
  const say = speaker(units);
  const speed = requireRange('nominal speed', speedOf(input, units), 'm/s', 5, 100);
  const window = windowOf(input);
  const cooling = plannedCoolDown(input, { speed, window });
  const measured = measuredSpread(input.measured ?? [], speed);
  const { distance, spread } = spreadOf(input, { measured, cooling, speed });
  const needed = planRuns({
    resolution: resolutionOf(input),
    spread,
    ...(input.power === undefined ? {} : { power: input.power }),
    ...(input.level === undefined ? {} : { level: input.level }),
    control: withRepeat ? 'repeat' : 'none',
  });
  const runsPerSet = Math.min(needed.runsPerSet ?? mostRuns, mostRuns);
  const warmUps = Math.max(fewestWarmUps, cooling.warmUps ?? 0);
  const runs = runOrder({ runsPerSet, warmUps, withRepeat });
  const told = {
    needed,
    runsPerSet,
    warmUps,
    withRepeat,
    runs: runs.length,
    cooling,
    distance,
    speed,
    measured,
  };
  return {
    kind: 'test-plan',
    version: 1,
    sentence: planSentence(told, say),
    nominalSpeed_m_s: speed,
    resolution_m: needed.resolution,
    spread_m: needed.spread,
    spreadOrigin: needed.spreadOrigin,
    power: needed.power,
    level: needed.level,
    runsPerSet,
    runsPerSetRange: rangeOf(needed),
    shows_m: runsPerSet === needed.runsPerSet ? (needed.shows ?? 0) : shownByRuns(needed, runsPerSet),
    withRepeat,
    runs: runs.map((run) => ({ ...run })),
    coolDown: {
      interval_s: { ...cooling.interval },
      startTemperature_C: { ...window },
      origin: cooling.origin,
      reason: cooling.reason(say),
    },
    duration_min: minutesOf(runs.length, cooling.interval),
    steps: planSteps(told, say),
    conditions: conditionsToWriteDown(),
    cautions: planCautions(distance, say),
    warnings: planWarnings({ ...told, input, window }, say),
  };
}

/** m/s: as stated, as the stops or the job have it, else 60 mph. */
function speedOf({ nominalSpeed, measured = [], job }: PlanTestInput, units: UnitSystem): number {
  if (nominalSpeed !== undefined) return nominalSpeed;
  const reports = measured.flatMap((set) => set.reports);
  const found = nominalSpeedOf({ reports, stated: undefined, units });
  if (found.ok) return found.speed;
  return job?.conditions.facts.speed.value ?? 60 * 0.44704;
}

function resolutionOf({ resolution, job }: PlanTestInput): number {
  return requireRange(
    'difference that should show',
    resolution ?? job?.test.resolution?.value ?? usualResolution,
    'm',
    0.01,
    100,
  );
}

function windowOf({ startTemperature, job }: PlanTestInput): { readonly low: number; readonly high: number } {
  if (startTemperature !== undefined) {
    const least = requireRange('coldest start of a stop', startTemperature.low, '°C', -50, 790);
    return {
      low: least,
      high: requireRange('hottest start of a stop', startTemperature.high, '°C', least + 1, 800),
    };
  }
  const [low, high] = [job?.test.startTemperatureLow?.value, job?.test.startTemperatureHigh?.value];
  return {
    low: low ?? Math.min(usualWindow.low, (high ?? Infinity) - 30),
    high: high ?? Math.max(usualWindow.high, (low ?? -Infinity) + 30),
  };
}

interface SpreadSources {
  readonly measured: MeasuredSpread | null;
  readonly cooling: PlannedCoolDown;
  readonly speed: number;
}

/** Spread and distance, m: stated, else measured, else a share of the distance. */
function spreadOf(
  { spread }: PlanTestInput,
  { measured, cooling, speed }: SpreadSources,
): { readonly distance: number; readonly spread: PlannedSpread } {
  const distance = measured?.distance ?? cooling.distance ?? speed ** 2 / (2 * assumedDeceleration);
  if (spread !== undefined)
    return {
      distance,
      spread: {
        origin: 'stated',
        standardDeviation: requireRange('spread of single stops', spread, 'm', 0.001, 100),
      },
    };
  if (measured !== null) {
    const { standardDeviation, degreesOfFreedom } = measured;
    return { distance, spread: { origin: 'measured', standardDeviation, degreesOfFreedom } };
  }
  return { distance, spread: { origin: 'assumed', standardDeviation: assumedScatter * distance } };
}

function rangeOf({ runsPerSetRange: { low, high } }: RunsPlan): TestPlan['runsPerSetRange'] {
  const most = 1_000_000;
  return { low: low ?? most, high: high ?? most };
}

function minutesOf(
  runs: number,
  { value, low, high }: PlannedCoolDown['interval'],
): TestPlan['duration_min'] {
  return { value: (runs * value) / 60, low: (runs * low) / 60, high: (runs * high) / 60 };
}
