import { OutOfRangeError, requireRange } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import { drawSheet } from '../draws/draw-sheet.ts';
import { knownsOf } from '../draws/knowns-of.ts';
import { orNone } from '../draws/or-none.ts';
import type { Job, JobSetUp } from '../job/job.ts';
import { printFillings } from '../job/print-fillings.ts';
import { SetUpRangeError } from '../predict/set-up-range-error.ts';
import { inOrder } from '../predict/warnings/in-order.ts';
import type { HeatReport, SetUpHeat } from '../results/heat-report.ts';
import type { Warning } from '../results/warning.ts';
import type { Draw } from '../settle/draw.ts';
import { settle } from '../settle/settle.ts';
import type { Overrides } from '../settle/settle.ts';
import { speaker } from '../words/speaker.ts';
import { heatRun } from './heat-run.ts';
import type { HeatAsk, HeatRun } from './heat-run.ts';
import { scheduleText } from './heat-schedule.ts';
import type { HeatSchedule } from './heat-schedule.ts';
import { heatSentence, setUpHeatSentence } from './heat-sentence.ts';
import { heatWarnings } from './heat-warnings.ts';
import { setUpHeat } from './set-up-heat.ts';

/** All SI; what is left out is as the job says. */
export interface ReportHeatOptions {
  /** The job's repeated stops where absent. */
  readonly schedule?: HeatSchedule;
  /** m/s; of stops, of a descent. The schedules of FMVSS 135 and laps have their own. */
  readonly speed?: number;
  /** N at the pedal pad, where stops are under a foot. */
  readonly pedalForce?: number;
  /** Draws behind the intervals; 100 where absent, 20 for the burnish. */
  readonly draws?: number;
  /** Any whole number; 1 where absent. */
  readonly seed?: number;
  /** Ids; all where absent. */
  readonly setUps?: readonly string[];
  /** Units of the sentences; `us` where absent. */
  readonly units?: UnitSystem;
}

/**
 * Answers what a schedule of stops does to the brakes of a job's set-ups: what gets too hot first and when, fade, fluid
 * against its boiling point at its age, and how many such stops they bear.
 *
 * Assumes: as `runSchedule`; central values come from the central inputs, intervals hold 95 % of the draws, and what
 * set-ups share is drawn once for all of them.
 *
 * @param job - the job
 * @param options - schedule; speed, m/s; pedal force, N; draws, seed; set-ups; units of the sentences
 * @returns the report, SI with the unit in each key (°C for temperatures)
 * @throws OutOfRangeError where what is asked is outside what the formulas are valid for
 * @throws SetUpRangeError where a set-up is, or gets hotter than can be computed
 */
export function reportHeat(job: Job, options: ReportHeatOptions = {}): HeatReport {
  const { schedule = { kind: 'stops' }, seed = 1, units = 'us' } = options;
  if (options.speed !== undefined) requireRange('speed', options.speed, 'm/s', 0.1, 150);
  if (options.pedalForce !== undefined) requireRange('pedal force', options.pedalForce, 'N', 0, 5000);
  const draws = options.draws ?? (schedule.kind === 'burnish' ? 20 : 100);
  const setUps = chosen(job, options.setUps);
  const overrides = { speed: options.speed, pedalForce: options.pedalForce };
  const isSpeedAsked = options.speed !== undefined;
  const ask = { schedule, isSpeedAsked, count: job.conditions.repeatedStops.count };
  const ids = setUps.map(({ id }) => id);
  const sheet = drawSheet({ knowns: knownsOf(job, ids), draws, seed });
  const say = speaker(units);
  const cases = setUps.map((setUp) => caseOf({ job, setUp, ask, overrides, sheet }));
  const [firstCase] = cases;
  if (firstCase === undefined) throw new RangeError('the job has no set-up');
  const text = scheduleText(schedule, firstCase.central.asked, say);
  const told = cases.map((one): { readonly setUp: SetUpHeat; readonly warnings: readonly Warning[] } => {
    const figures = setUpHeat(one.setUp, one.central, one.drawn);
    const setUp = { ...figures, sentence: setUpHeatSentence(figures, text, say) };
    const leftOut = draws - one.drawn.length;
    return {
      setUp,
      warnings: heatWarnings({ setUp, central: one.central, leftOut, draws, scheduleText: text }, say),
    };
  });
  const answers = told.map(({ setUp }) => setUp);
  return {
    kind: 'heat-report',
    version: 1,
    sentence: heatSentence(answers, text, say),
    job: job.title,
    schedule: schedule.kind,
    scheduleText: text,
    speed_m_s: firstCase.central.asked.speed,
    pedalForce_N: firstCase.central.asked.foot.force,
    draws,
    seed,
    setUps: answers,
    warnings: inOrder(
      told.flatMap(({ warnings }) => warnings),
      setUps.length,
    ),
    assumed: printFillings(job.fillings, units),
  };
}

interface CaseInput {
  readonly job: Job;
  readonly setUp: JobSetUp;
  readonly ask: Omit<HeatAsk, 'isRecorded'>;
  readonly overrides: Overrides;
  readonly sheet: readonly Draw[];
}

interface HeatCase {
  readonly setUp: JobSetUp;
  readonly central: HeatRun;
  readonly drawn: readonly HeatRun[];
}

function caseOf({ job, setUp, ask, overrides, sheet }: CaseInput): HeatCase {
  const { id, title } = setUp;
  try {
    const central = heatRun(settle(job, id, undefined, overrides), { ...ask, isRecorded: true });
    const drawn = sheet.flatMap((draw) => {
      const run = orNone(() => heatRun(settle(job, id, draw, overrides), { ...ask, isRecorded: false }));
      return run === null ? [] : [run];
    });
    return { setUp, central, drawn };
  } catch (error) {
    if (error instanceof OutOfRangeError) throw new SetUpRangeError(id, title, error);
    throw error;
  }
}

/** As asked, else all with the car as found first. */
function chosen(job: Job, ids: readonly string[] | undefined): readonly JobSetUp[] {
  if (ids === undefined)
    return job.setUps.toSorted((one, other) => Number(one.basedOn !== null) - Number(other.basedOn !== null));
  return ids.map((id) => {
    const found = job.setUps.find((setUp) => setUp.id === id);
    if (found === undefined) throw new RangeError(`the job has no set-up "${id}"`);
    return found;
  });
}
