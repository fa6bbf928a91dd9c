import type {
  Comparison,
  Estimate,
  FadeReport,
  LogReport,
  Reconciliation,
  StopResult,
} from '@standstill/workshop';

/** An estimate with a half-width. */
export function within(value: number, half: number): Estimate {
  return { value, low: value - half, high: value + half };
}

/** A stop at an even deceleration, m/s and m/s², sampled ten times a second from 1 s before its start at 100 s. */
export function madeStop(number: number, given: Partial<StopResult> = {}): StopResult {
  const [speed, deceleration] = [given.entrySpeed_m_s ?? 25, 8];
  const times = Array.from({ length: 42 }, (_, index) => (index - 10) / 10);
  const duration = speed / deceleration;
  return {
    number,
    clock: null,
    start_s: 100,
    end_s: 100 + duration,
    startBy: 'brake-switch',
    entrySpeed_m_s: speed,
    applicationDistance_m: speed ** 2 / (2 * deceleration),
    distanceStandardError_m: 0.4,
    gateDistance_m: null,
    correctedDistance_m: speed ** 2 / (2 * deceleration),
    duration_s: duration,
    meanDecelerationByDistance_m_s2: deceleration,
    meanDecelerationByTime_m_s2: deceleration,
    meanFullyDevelopedDeceleration_m_s2: deceleration,
    peakDeceleration_m_s2: deceleration,
    buildUpTime_s: null,
    sampleRate_Hz: 10,
    counted: true,
    flags: [],
    judgement: null,
    temperatures: [],
    developedPressure_Pa: null,
    developedPedalForce_N: null,
    heading_rad: null,
    trace: {
      time_s: times.map((time) => 100 + time),
      speed_m_s: times.map((time) => Math.max(0, speed - deceleration * Math.max(0, time))),
      speedStandardError_m_s: times.map(() => 0.3),
      deceleration_m_s2: times.map((time) => (time > 0 && time < duration ? deceleration : 0)),
    },
    ...given,
  };
}

/** A log with these stops, meant from 25 m/s. */
export function madeReport(name: string, stops: readonly StopResult[]): LogReport {
  return {
    kind: 'log-report',
    version: 1,
    sentence: `${name}: so many stops.`,
    source: { name, format: 'csv', bytes: 1000, rows: 100 },
    epoch: null,
    duration_s: 200,
    channels: [],
    headings: null,
    sensors: [],
    issues: [],
    nominalSpeed_m_s: 25,
    stops: [...stops],
  };
}

type SetResult = Comparison['before'];

/** A set of a comparison, m. */
export function madeSet(
  name: string,
  distances: readonly number[],
  given: Partial<SetResult> = {},
): SetResult {
  const mean = distances.reduce((sum, each) => sum + each, 0) / distances.length;
  return {
    name,
    count: distances.length,
    mean_m: within(mean, 0.5),
    sharedError_m: 0,
    standardDeviation_m: 0.5,
    best_m: Math.min(...distances),
    worst_m: Math.max(...distances),
    distances_m: [...distances],
    trend_m_per_run: null,
    warmUp_m: null,
    leftOut: [],
    judged: [],
    ...given,
  };
}

/** A comparison of two sets whose sentence is given. */
export function madeComparison(before: SetResult, after: SetResult): Comparison {
  const difference = after.mean_m.value - before.mean_m.value;
  return {
    kind: 'comparison',
    version: 1,
    sentence: 'The car stops shorter.',
    definition: 'application',
    nominalSpeed_m_s: 25,
    before,
    after,
    difference_m: within(difference, 0.7),
    differencePercent: within((100 * difference) / before.mean_m.value, 2),
    bootstrap_m: null,
    adjusted: null,
    control: null,
    sameLogger: true,
    welch: null,
    permutation: { p: 0.01, arrangements: 70, exact: true },
    bestOfEach: { difference_m: difference, expectedGainBefore_m: null, expectedGainAfter_m: null },
    runsNeeded: { difference_m: 1, runsPerSet: 4 },
    confounders: [],
    confounded: false,
    advice: [],
    expectation: null,
    warnings: [],
  };
}

/** Ten stops on one line, 0.5 m longer each, the fifth left out; one rotor from 100 °C up. */
export function madeFade(): FadeReport {
  const stops = Array.from({ length: 10 }, (_, index) => ({
    number: index + 1,
    log: 'fade.csv',
    start_s: 45 * index,
    distance_m: 40 + 0.5 * index,
    distanceStandardError_m: 0.2,
    restedFor_s: null,
    temperatures: [{ channel: 'front rotor', start_C: 100 + 30 * index }],
    counted: index !== 4,
    reason: index === 4 ? 'A gap in the samples.' : null,
  }));
  return {
    kind: 'fade-report',
    version: 1,
    sentence: 'The tenth stop is longer than the first.',
    nominalSpeed_m_s: 25,
    definition: 'application',
    set: {
      name: 'before',
      stops,
      slope_m_per_stop: within(0.5, 0.1),
      growth_m: within(4.5, 0.9),
      growthPercent: within(11, 2),
      bends: false,
      temperatures: [],
    },
    against: null,
    slopeDifference_m_per_stop: null,
    expectation: null,
    warnings: [],
  };
}

/** A change that the brakes explain a third of, m. */
export function madeReconciliation(): Reconciliation {
  return {
    kind: 'reconciliation',
    version: 1,
    sentence: 'The brakes can explain a third of the gain.',
    nominalSpeed_m_s: 25,
    before: { setUp: 'as-found', title: 'As found', count: 6 },
    after: { setUp: 'kit', title: 'Kit', count: 6 },
    observations: [
      {
        set: 'before',
        quantity: 'stopping-distance',
        title: 'Stopping distance',
        unit: 'm',
        measured: within(50, 0.8),
        byJob: within(52, 4),
        learned: within(50.1, 0.7),
        agrees: true,
      },
    ],
    learned: [],
    notToldApart: [],
    fit: { chiSquared: 1, degreesOfFreedom: 1, p: 0.3, sentence: 'It fits.' },
    change: {
      byJob_m: within(-1, 3),
      expected_m: within(-2, 1),
      measured_m: within(-6, 0.9),
      share: within(0.33, 0.2),
      unexplained_m: within(-4, 1.3),
    },
    beyondTheBrakes: ['Other tires after.'],
    warnings: [],
    assumed: [],
  };
}
