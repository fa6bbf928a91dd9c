import {
  fromUnit,
  preferredUnit,
  quantityKinds,
  type QuantityKind,
  type UnitSystem,
} from '@standstill/units';
import type { Estimate, Reconciliation } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { quantityPrinter, realMinus, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

interface Look {
  readonly units: UnitSystem;
  readonly assumed: boolean;
  /** What the sets themselves have to say, such as runs of several set-ups on one side. */
  readonly setsWarnings: readonly string[];
}

/** The kind of quantity behind a unit that a result names; others are printed with the unit as it is. */
const kinds: Readonly<Record<string, QuantityKind>> = {
  'stopping-distance': 'stopping-distance',
  'fully-developed-deceleration': 'deceleration',
  'build-up-time': 'time',
};

/** A step of pressure or force that a foot can feel, in the person's units: what a deceleration is given for. */
const steps: Readonly<
  Record<string, { readonly kind: QuantityKind; readonly us: number; readonly metric: number }>
> = {
  'deceleration-per-pressure': { kind: 'line-pressure', us: 100, metric: 10 },
  'deceleration-per-pedal-force': { kind: 'force', us: 10, metric: 50 },
};

/** The model against measured stops, for a person: the answer, the change, what was measured and learned, what stays open. */
export function reconciliationText(
  result: Reconciliation,
  { units, assumed, setsWarnings }: Look,
  terminal: Terminal,
): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  return [
    [colors.bold(result.sentence)],
    [
      ...warningLines(result.warnings, ['danger'], colors),
      ...setsWarnings.map((text) => `${colors.yellow('Caution:')} ${text}`),
    ],
    changeLines(result, print, terminal),
    [observationTable(result, print, { units, terminal }), result.fit.sentence],
    learnedBlock(result, terminal),
    result.notToldApart.map(({ sentence, toTellApart }) =>
      toTellApart === null ? sentence : `${sentence} ${toTellApart}`,
    ),
    result.beyondTheBrakes.length === 0
      ? []
      : [colors.bold('What may be behind the rest:'), ...result.beyondTheBrakes.map((text) => `  ${text}`)],
    warningLines(result.warnings, ['caution', 'note'], colors),
    assumed ? assumedLines(result.assumed, colors) : assumedSummary(result.assumed),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function changeLines(
  { change, before, after }: Reconciliation,
  print: QuantityPrinter,
  terminal: Terminal,
): string[] {
  if (change === null) return [];
  const rows: (readonly [string, Estimate | null, QuantityKind])[] = [
    ['expected by the job alone', change.byJob_m, 'stopping-distance'],
    ['expected after learning', change.expected_m, 'stopping-distance'],
    ['measured', change.measured_m, 'stopping-distance'],
    ['not explained by the brakes', change.unexplained_m, 'stopping-distance'],
    ['share that the brakes explain', change.share, 'share'],
  ];
  const cells = rows.flatMap(([title, value, kind]) => {
    if (value === null) return [];
    return [[title, kind === 'share' ? print.estimate(value, kind) : print.difference(value, kind)]];
  });
  return [
    textTable(
      [`${before.title} to ${after?.title ?? 'what is proposed'}`, 'change'],
      cells,
      terminal,
      'rows',
    ),
    terminal.colors.dim('Minus is shorter. Ranges are 95 %.'),
  ];
}

function observationTable(
  { observations }: Reconciliation,
  print: QuantityPrinter,
  { units, terminal }: { readonly units: UnitSystem; readonly terminal: Terminal },
): string {
  const head = ['', 'measured', 'by the job', 'after learning', 'agrees'];
  const rows = observations.map(({ set, quantity, title, unit, measured, byJob, learned, agrees }) => {
    const figure = (value: Estimate): string => {
      const kind = kinds[quantity];
      if (kind !== undefined) return print.estimate(value, kind);
      const per = steps[quantity];
      return per === undefined ? bare(value, unit) : perStep(value, per, print, units);
    };
    return [`${title}, ${set}`, figure(measured), figure(byJob), figure(learned), agrees ? 'yes' : 'no'];
  });
  return textTable(head, rows, terminal, 'rows');
}

function learnedBlock({ learned }: Reconciliation, terminal: Terminal): string[] {
  const most = learned.filter(({ narrowed }) => narrowed >= 0.05);
  if (most.length === 0) return [];
  const rows = most.map(({ title, unit, byJob, learned: after, narrowed }) => [
    title,
    bare(byJob, unit),
    bare(after, unit),
    `${Math.round(100 * narrowed)} %`,
  ]);
  return [textTable(['Learned:', 'by the job', 'after learning', 'narrowed by'], rows, terminal, 'rows')];
}

function perStep(
  { value, low, high }: Estimate,
  { kind, ...size }: (typeof steps)[string],
  print: QuantityPrinter,
  units: UnitSystem,
): string {
  const unit = preferredUnit(kind, { system: units });
  const step = fromUnit(size[units], unit, quantityKinds[kind].dimension);
  const one = { value: value * step, low: low * step, high: high * step };
  return `${print.estimate(one, 'deceleration')} per ${size[units]} ${unit}`;
}

/** In the unit that the result names, to the digits of its interval. */
function bare({ value, low, high }: Estimate, unit: string): string {
  const half = (high - low) / 2;
  const digits = half > 0 ? Math.min(6, Math.max(0, -Math.floor(Math.log10(half)))) : 3;
  const print = (number: number): string => number.toFixed(digits);
  const symbol = unit === '1' || unit === '' ? '' : ` ${unit}`;
  return realMinus(`${print(value)} (${print(low)} to ${print(high)})${symbol}`);
}
