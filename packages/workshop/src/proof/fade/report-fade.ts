import { fadeOfStops, slopeDifference } from '@standstill/logs';
import type { FadeOfStops, TooFewToFade } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { FadeRefusal, FadeReport } from '../../results/fade-report.ts';
import { speaker } from '../../words/speaker.ts';
import { allDifferences } from '../differences/all-differences.ts';
import { nominalSpeedOf } from '../nominal-speed-of.ts';
import { repeatedLog } from '../repeated-log.ts';
import type { RunSet } from '../sets/run-set.ts';
import { stopSetOf } from '../stop-set-of.ts';
import { fadeExpectation } from './fade-expectation.ts';
import type { ExpectedFade } from './expected-fade.ts';
import { fadeSentence } from './fade-sentence.ts';
import { fadeSetResult } from './fade-set-result.ts';
import { fadeWarnings } from './fade-warnings.ts';
import { refuseFade } from './refuse-fade.ts';

export interface ReportFadeInput {
  /** Stops one after the other, of one or several logs. */
  readonly set: RunSet;
  /** A second set, such as the same schedule after the change. */
  readonly against?: RunSet;
  /** `application` where absent. */
  readonly definition?: 'application' | 'gate';
  /** m/s; that of the reports where absent, else a round speed near that of the stops. */
  readonly nominalSpeed?: number;
  /** What the model expects of the stops of `set`; see `expectFade`. */
  readonly expectation?: ExpectedFade;
  /** What a reader must know first. */
  readonly warnings?: readonly string[];
  readonly units?: UnitSystem;
}

/**
 * Says how distance and temperature go with the number of the stop: whether, and how much, the brakes fade.
 *
 * Assumes: as `fadeOfStops`. What grows with the stops may be the tires or the driver as well as the brakes.
 *
 * @param input - the stops in the order driven, a second set; definition; nominal speed, m/s; what the model expects, m
 * @returns slope, growth and temperatures (m per stop, m, °C); or one sentence that says what is missing
 */
export function reportFade(input: ReportFadeInput): FadeReport | FadeRefusal {
  const { set, against, definition = 'application', units = 'us' } = input;
  const reports = [...set.reports, ...(against?.reports ?? [])];
  const nominal = nominalSpeedOf({ reports, stated: input.nominalSpeed, units });
  if (!nominal.ok) return refuseFade(nominal.code, input, {});
  const repeated = repeatedLog({ before: set, after: against ?? { name: 'none', reports: [] } });
  if (repeated !== null) return refuseFade('same-log', input, { repeated });
  const isGateMoved = reports.some(
    ({ nominalSpeed_m_s: speed }) => speed === null || Math.abs(speed - nominal.speed) > 1e-6,
  );
  if (definition === 'gate' && isGateMoved) return refuseFade('no-gate-distance', input, {});
  const fadeOf = (one: RunSet): FadeOfStops | TooFewToFade =>
    fadeOfStops(stopSetOf(one, nominal.speed), { nominalSpeed: nominal.speed, definition });
  const first = fadeOf(set);
  if (!first.ok) return refuseFade('too-few-to-fade', input, { tooFew: first, name: set.name });
  const second = against === undefined ? null : fadeOf(against);
  if (second?.ok === false)
    return refuseFade('too-few-to-fade', input, { tooFew: second, name: against?.name ?? '' });
  return reportOf(input, { first, second, isGuessed: nominal.guessed });
}

interface FoundFade {
  readonly first: FadeOfStops;
  readonly second: FadeOfStops | null;
  readonly isGuessed: boolean;
}

function reportOf(input: ReportFadeInput, { first, second, isGuessed }: FoundFade): FadeReport {
  const { set, against, units = 'us' } = input;
  const say = speaker(units);
  const apart = second === null ? null : slopeDifference(first, second).difference;
  const expectation = input.expectation === undefined ? null : fadeExpectation(first, input.expectation, say);
  const differences = against === undefined ? [] : allDifferences({ before: set, after: against, units });
  return {
    kind: 'fade-report',
    version: 1,
    sentence: fadeSentence({ first, second, apart }, say),
    nominalSpeed_m_s: first.nominalSpeed,
    definition: first.definition,
    set: fadeSetResult(first, set),
    against: second === null || against === undefined ? null : fadeSetResult(second, against),
    slopeDifference_m_per_stop: apart === null ? null : { ...apart },
    expectation,
    warnings: [...(input.warnings ?? []), ...fadeWarnings({ first, second, isGuessed, differences }, say)],
  };
}
