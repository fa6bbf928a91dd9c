import type { UnitSystem } from '@standstill/units';
import type { TestPlan } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { quantityPrinter, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';

const origins = {
  measured: 'as measured',
  stated: 'as you say',
  assumed: 'ASSUMED',
} as const;

/** Where a plan says so many runs, no number of them is enough. */
const endless = 1_000_000;

/** What to drive, for a person: how many stops, cautions, the steps, the runs in their order, what to write down. */
export function planText(plan: TestPlan, units: UnitSystem, terminal: Terminal): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  return [
    [colors.bold(plan.sentence)],
    plan.cautions.map((text) => `${colors.bold('Caution:')} ${text}`),
    [whyLine(plan, print)],
    [colors.bold('In this order:'), ...plan.steps.map((text, index) => `  ${index + 1}. ${text}`)],
    [runTable(plan, terminal), coolDownLine(plan, print)],
    [colors.bold('Write down:'), ...plan.conditions.map(({ what, why }) => `  ${what}: ${why}`)],
    plan.warnings.map((text) => `${colors.yellow('Note:')} ${text}`),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function whyLine(plan: TestPlan, print: QuantityPrinter): string {
  const { runsPerSet, runsPerSetRange: range, power, level } = plan;
  const length = (meters: number): string => print.quantity(meters, 'stopping-distance', meters / 10);
  const spread = `${length(plan.spread_m)} between single stops (s.d., ${origins[plan.spreadOrigin]})`;
  const open =
    range.low === range.high
      ? ''
      : ` (${range.low} to ${range.high >= endless ? 'no end' : range.high} by what the spread may really be)`;
  return `${runsPerSet} stops a set${open}, from ${print.quantity(plan.nominalSpeed_m_s, 'speed')}, at a spread of ${spread}: they show ${length(plan.shows_m)} with a chance of ${Math.round(100 * power)} %, and cry wolf in ${Math.round(100 * level)} %.`;
}

/** One row for each stretch of alike runs, so that a long plan stays in sight. */
function runTable({ runs }: TestPlan, terminal: Terminal): string {
  const groups: { set: string; purpose: string; from: number; to: number; ways: string[] }[] = [];
  for (const { order, set, purpose, direction } of runs) {
    const last = groups.at(-1);
    if (last !== undefined && last.set === set && last.purpose === purpose) {
      last.to = order;
      last.ways.push(direction);
    } else groups.push({ set, purpose, from: order, to: order, ways: [direction] });
  }
  const rows = groups.map(({ set, purpose, from, to, ways }) => [
    from === to ? String(from) : `${from} to ${to}`,
    set === 'repeat' ? 'old set-up once more' : set,
    purpose === 'warm-up' ? 'warm-up, not counted' : 'counted',
    waysOf(ways),
  ]);
  return textTable(['Run', 'set', 'purpose', 'direction'], rows, terminal, 'rows');
}

/** Two ways that take turns are said once. */
function waysOf(ways: readonly string[]): string {
  const inTurn = ways.length > 2 && ways.every((way, index) => index < 2 || way === ways[index - 2]);
  return inTurn ? `${ways.slice(0, 2).join(', ')}, and so on` : ways.join(', ');
}

function coolDownLine({ coolDown, duration_min }: TestPlan, print: QuantityPrinter): string {
  const { interval_s, startTemperature_C: start, origin, reason } = coolDown;
  const window = `${print.quantity(start.low, 'temperature', 20)} to ${print.quantity(start.high, 'temperature', 20)}`;
  const { value, low, high } = duration_min;
  const minutes = low === high ? rough(value) : `${rough(low)} to ${rough(high)}`;
  const how = origin === 'model' ? '' : ' (ASSUMED)';
  return `From one stop to the next ${print.estimate(interval_s, 'time')}${how}; start each with the brakes at ${window}. ${reason.replace(/\.$/u, '')}. About ${minutes} min of driving.`;
}

/** Nobody plans to the minute. */
function rough(minutes: number): string {
  return String(Math.max(5, Math.round(minutes / 5) * 5));
}
