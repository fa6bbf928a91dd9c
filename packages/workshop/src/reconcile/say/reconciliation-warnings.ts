import type { Warning } from '../../results/warning.ts';
import { plural } from '../../words/plural.ts';
import type { Explained } from '../explained.ts';
import { tiresChanged } from './tires-changed.ts';

/** Stops in a set under which its spread is hardly known (common practice). */
const fewStops = 4;

/** What a reader must know before repeating the answer. */
export function reconciliationWarnings(about: Explained & { readonly effectiveDraws: number }): Warning[] {
  return [...ofFit(about), ...ofTires(about), ...ofStart(about), ...ofCount(about)];
}

function ofFit({ fits, effectiveDraws, before }: Explained & { readonly effectiveDraws: number }): Warning[] {
  if (fits) return [];
  return [
    {
      code: 'stops-do-not-fit-job',
      severity: 'danger',
      about: before.id,
      message: `The stops before do not fit the job within its spreads (the draws that fit are worth ${Math.round(effectiveDraws)}): what the job says of the car is not what was driven, and neither the expected change nor any verdict of it may be relied on until that is found.`,
    },
  ];
}

function ofTires(about: Explained): Warning[] {
  if (about.compared === null || !tiresChanged(about)) return [];
  return [
    {
      code: 'tires-and-brakes-changed',
      severity: 'caution',
      message:
        'Tires and brakes were changed between the same two sets: measured stops can not part their effects, and the share of the brakes rests on the model alone.',
    },
  ];
}

function ofStart({ measured }: Explained): Warning[] {
  const { before, after } = measured;
  if (after === null || before.startsAtOnset === after.startsAtOnset) return [];
  return [
    {
      code: 'starts-told-differently',
      severity: 'caution',
      message:
        'One set begins at the brake signal and the other at the onset of deceleration; the model follows each, but the measured change is less sure.',
    },
  ];
}

function ofCount({ measured, before, after }: Explained): Warning[] {
  const sets = [
    [before, measured.before],
    [after, measured.after],
  ] as const;
  return sets.flatMap(([setUp, set]) =>
    setUp === null || set === null || set.stops.length >= fewStops
      ? []
      : [
          {
            code: 'few-stops',
            severity: 'note' as const,
            about: setUp.id,
            message: `"${setUp.title}" was stopped only ${plural(set.stops.length, 'time')}: how much stops scatter is then mostly what they usually do.`,
          },
        ],
  );
}
