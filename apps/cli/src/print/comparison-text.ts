import type { UnitSystem } from '@standstill/units';
import type { Comparison, Estimate } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { quantityPrinter, realMinus, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';

const definitions = {
  application: 'from the first brake application to rest',
  gate: 'from crossing the nominal speed to rest',
} as const;

/** Before against after, for a person: the answer, the two sets, how sure it is, and what else could have made it. */
export function comparisonText(comparison: Comparison, units: UnitSystem, terminal: Terminal): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  return [
    [colors.bold(comparison.sentence)],
    [setTable(comparison, print, terminal), colors.dim(definitionLine(comparison, print))],
    evidenceLines(comparison, print),
    otherwiseLines(comparison, print),
    [...leftOutLines('before', comparison.before), ...leftOutLines('after', comparison.after)],
    comparison.expectation === null ? [] : expectationLines(comparison.expectation, print),
    comparison.confounders.map((text) => `${colors.yellow('Also different:')} ${text}`),
    comparison.warnings.map((text) => `${colors.yellow('Caution:')} ${text}`),
    comparison.advice.map((text) => `${colors.bold('To drive:')} ${text}`),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function setTable({ before, after }: Comparison, print: QuantityPrinter, terminal: Terminal): string {
  const head = ['', 'stops', 'mean', 'spread (s.d.)', 'best', 'worst', 'trend a stop', 'warm-up'];
  const rows = [before, after].map((set) => [
    set.name,
    String(set.count),
    print.estimate(set.mean_m, 'stopping-distance'),
    print.quantity(set.standardDeviation_m, 'stopping-distance', (set.standardDeviation_m ?? 0) / 4),
    print.quantity(set.best_m, 'stopping-distance', halfWidth(set.mean_m)),
    print.quantity(set.worst_m, 'stopping-distance', halfWidth(set.mean_m)),
    print.difference(set.trend_m_per_run, 'stopping-distance'),
    print.difference(set.warmUp_m, 'stopping-distance'),
  ]);
  return textTable(head, rows, terminal, 'rows');
}

function definitionLine(comparison: Comparison, print: QuantityPrinter): string {
  const { definition, nominalSpeed_m_s } = comparison;
  const from = `Distances are ${definitions[definition]}, at ${print.quantity(nominalSpeed_m_s, 'speed')}.`;
  return `${from} Intervals are 95 %.${delayWords(comparison, print)}`;
}

/** An error that all stops of a logger share is in the means, and only between two loggers in the difference. */
function delayWords({ before, after, sameLogger }: Comparison, print: QuantityPrinter): string {
  const shared = 1.96 * Math.max(before.sharedError_m, after.sharedError_m);
  if (!(shared > 0)) return '';
  const size = print.quantity(shared, 'stopping-distance', shared);
  const effect = sameLogger
    ? 'which moves both alike and drops out of the difference'
    : 'and so does the difference';
  return ` The means hold the unknown delay between brake signal and speed (up to ${size}), ${effect}.`;
}

function evidenceLines(comparison: Comparison, print: QuantityPrinter): string[] {
  const { difference_m, differencePercent, welch, permutation, bestOfEach, runsNeeded } = comparison;
  const { value, low, high } = differencePercent;
  const percent = `${value.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)}) %`;
  const ways = `${permutation.exact ? 'all' : 'drawn'} ${permutation.arrangements} arrangements`;
  const known = (meters: number | null): string =>
    realMinus(print.quantity(meters, 'stopping-distance', halfWidth(difference_m)));
  const [gainBefore, gainAfter] = [
    known(bestOfEach.expectedGainBefore_m),
    known(bestOfEach.expectedGainAfter_m),
  ];
  return [
    `After minus before: ${print.difference(difference_m, 'stopping-distance')}, ${realMinus(percent)}; minus is shorter.`,
    ...(welch === null
      ? []
      : [
          `Chance of a difference this large if nothing had changed: ${chance(welch.p)} (Welch t ${realMinus(welch.t.toFixed(2))}, ${welch.degreesOfFreedom.toFixed(1)} degrees of freedom).`,
        ]),
    `The same by shuffling the stops: ${chance(permutation.p)} (${ways}).`,
    `Best against best would claim ${known(Math.abs(bestOfEach.difference_m))} ${bestOfEach.difference_m < 0 ? 'shorter' : 'longer'}; taking a best alone gains about ${gainBefore} before and ${gainAfter} after.`,
    isSure(difference_m)
      ? runsLine(runsNeeded, known)
      : 'No sure difference: how many stops it takes to show one that matters, "standstill plan" says.',
  ];
}

/** The difference in other ways: drawn anew, with trend and conditions taken out, with what moved by itself taken out. */
function otherwiseLines({ bootstrap_m, adjusted, control }: Comparison, print: QuantityPrinter): string[] {
  return [
    ...(bootstrap_m === null
      ? []
      : [
          `By drawing both sets anew from themselves: ${print.difference(bootstrap_m, 'stopping-distance')}; too narrow where sets are small.`,
        ]),
    ...(adjusted === null ? [] : [adjusted.sentence]),
    ...(control === null ? [] : [control.sentence]),
  ];
}

/** Every stop that does not count or that a person judged, with the reason; nothing is left out in silence. */
function leftOutLines(side: string, { leftOut, judged }: Comparison['before']): string[] {
  const byHand = judged.map(
    ({ log, number, verdict, reason }) =>
      `${verdict === 'rejected' ? 'Rejected' : 'Restored'} by hand, ${side}: stop ${number} of ${log}: ${ended(reason)}`,
  );
  const others = leftOut
    .filter(({ log, number }) => !judged.some((each) => each.log === log && each.number === number))
    .map(({ log, number, reason }) => `Left out, ${side}: stop ${number} of ${log}: ${ended(reason)}`);
  return [...byHand, ...others];
}

function ended(sentence: string): string {
  return `${sentence.replace(/\.$/u, '')}.`;
}

function chance(p: number): string {
  return p < 0.001 ? 'under 0.1 %' : `${Number((p * 100).toPrecision(2))} %`;
}

function runsLine(
  { difference_m, runsPerSet }: Comparison['runsNeeded'],
  known: (meters: number) => string,
): string {
  const difference = known(Math.abs(difference_m));
  if (runsPerSet === null)
    return `How many stops it takes to see ${difference} can't be said from these sets.`;
  return `To see ${difference} with 80 % power at this spread: ${runsPerSet} stops a set. That is against scatter only: to see what changes from day to day, drive the old set-up again.`;
}

function isSure({ low, high }: Estimate): boolean {
  return low > 0 || high < 0;
}

function halfWidth({ low, high }: Estimate): number {
  return (high - low) / 2;
}

function expectationLines(
  expectation: NonNullable<Comparison['expectation']>,
  print: QuantityPrinter,
): string[] {
  const { sentence, setUp, expected_m, explainedShare, unexplained_m } = expectation;
  return [
    sentence,
    `Expected of ${setUp}: ${print.difference(expected_m, 'stopping-distance')}; share explained ${realMinus(print.estimate(explainedShare, 'share'))}; not explained ${print.difference(unexplained_m, 'stopping-distance')}.`,
  ];
}
