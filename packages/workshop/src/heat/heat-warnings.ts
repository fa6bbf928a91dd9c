import type { SetUpHeat } from '../results/heat-report.ts';
import type { Warning } from '../results/warning.ts';
import { hottestRotor } from '../predict/warnings/heat-notes.ts';
import type { Speaker } from '../words/speaker.ts';
import { percent } from '../words/percent.ts';
import { fluidWarning } from './fluid-warning.ts';
import type { HeatRun } from './heat-run.ts';

interface HeatWarningsInput {
  readonly setUp: SetUpHeat;
  readonly central: HeatRun;
  /** Draws without an answer, of all. */
  readonly leftOut: number;
  readonly draws: number;
  readonly scheduleText: string;
}

/** Everything that must be seen of one set-up before acting. */
export function heatWarnings(input: HeatWarningsInput, say: Speaker): Warning[] {
  const { setUp, central } = input;
  return [
    ...stopsWarnings(input),
    ...fluidWarnings(input, say),
    ...padWarnings(setUp, say),
    ...rotorWarnings(setUp, say),
    ...reachWarnings(setUp, central),
    ...leftOutWarnings(input),
    fromClasses(setUp),
  ];
}

function caution(setUp: SetUpHeat, { code, message }: Pick<Warning, 'code' | 'message'>): Warning {
  return { code, severity: 'caution', about: setUp.id, message: `${setUp.title}: ${message}` };
}

function stopsWarnings({ setUp, scheduleText }: HeatWarningsInput): Warning[] {
  if (setUp.isFinished) return [];
  const message = `${setUp.title}: the brakes fade until the car no longer comes to rest in ${scheduleText}. Do not drive it like this.`;
  return [{ code: 'car-does-not-stop', severity: 'danger', about: setUp.id, message }];
}

function fluidWarnings({ setUp, scheduleText }: HeatWarningsInput, say: Speaker): Warning[] {
  const [hotter] = setUp.limits
    .filter(({ what }) => what.endsWith('fluid'))
    .toSorted((one, other) => other.highest_C.value - one.highest_C.value);
  if (hotter === undefined) return [];
  const found = fluidWarning(
    {
      id: setUp.id,
      title: setUp.title,
      highest: hotter.highest_C,
      boiling: setUp.fluid.boiling_C.value,
      boilsShare: Math.max(
        ...setUp.limits.filter(({ what }) => what.endsWith('fluid')).map((one) => one.passedShare),
      ),
      when: `in ${scheduleText} or after it`,
    },
    say,
  );
  return found === null ? [] : [found];
}

function padWarnings(setUp: SetUpHeat, say: Speaker): Warning[] {
  return setUp.limits
    .filter(({ what }) => what.endsWith('pads'))
    .flatMap(({ what, limit_C, highest_C, passedShare }) => {
      const reached = say.rounded(highest_C.value, 'temperature', 2);
      if (limit_C === null)
        return [
          caution(setUp, {
            code: 'fade-not-stated',
            message: `the friction of the ${what} is not stated up to where they fade; their faces reach ${reached}, and what they do there is not known.`,
          }),
        ];
      if (passedShare < 0.05 && highest_C.value <= limit_C.value) return [];
      const at = say.rounded(limit_C.value, 'temperature', 2);
      return [
        caution(setUp, {
          code: 'pads-fade',
          message: `the ${what} fade (below 80 % of their best friction at ${at}, our own line): their faces reach ${reached}, in ${percent(passedShare)} of the draws past it.`,
        }),
      ];
    });
}

function rotorWarnings(setUp: SetUpHeat, say: Speaker): Warning[] {
  return (['front', 'rear'] as const)
    .filter((axle) => setUp[axle].interface_C.value > hottestRotor)
    .map((axle) => {
      const reached = say.rounded(setUp[axle].interface_C.value, 'temperature', 2);
      return caution(setUp, {
        code: 'rotor-beyond-model',
        message: `the ${axle} rotors reach ${reached}, above ${say.plain(hottestRotor, 'temperature')}, where the figures of iron end (common practice): outside the model.`,
      });
    });
}

function reachWarnings(setUp: SetUpHeat, { outcome }: HeatRun): Warning[] {
  const beyond = outcome.stops.filter(({ isWithinReach }) => !isWithinReach);
  const warnings: Warning[] = [];
  if (beyond.length > 0)
    warnings.push(
      caution(setUp, {
        code: 'deceleration-out-of-reach',
        message: `${beyond.length} of the ${outcome.stops.length} slowings ask more than the tires, or a foot of 1000 N, can give; their heat is an upper bound and the car would go further.`,
      }),
    );
  if (outcome.isHurried)
    warnings.push(
      caution(setUp, {
        code: 'interval-too-short',
        message:
          'the slowings follow each other faster than the speed can be regained (at 2.5 m/s², assumed): no car can be driven like this, and the temperatures belong to no real drive.',
      }),
    );
  return warnings;
}

function leftOutWarnings({ setUp, leftOut, draws }: HeatWarningsInput): Warning[] {
  if (leftOut === 0) return [];
  return [
    caution(setUp, {
      code: 'draws-left-out',
      message: `${leftOut} of ${draws} draws fell outside what the formulas are valid for and were left out of all intervals, which are too short for it.`,
    }),
  ];
}

function fromClasses({ id, title }: SetUpHeat): Warning {
  const message = `${title}: pads, pistons, caliper, fluid and hub take up heat by class values, most of them from memory (see what was assumed); no published measurement of a fluid temperature stands behind them. A probe in the caliper does.`;
  return { code: 'heat-path-by-class', severity: 'note', about: id, message };
}
