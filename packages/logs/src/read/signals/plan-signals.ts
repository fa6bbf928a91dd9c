import type { IssueList } from '../../channels/issue-list.ts';
import { listedChoices, type ColumnChoice } from '../csv/column-choice.ts';
import type { ColumnRole } from '../csv/guess-quantity.ts';
import { findLabel } from '../csv/plan-columns.ts';
import { roleDimension } from '../csv/role-dimension.ts';
import { unitScale } from '../csv/unit-scale.ts';
import { quotedList, refuseLog, type LogRefusal } from '../log-refusal.ts';
import type { ReadOptions } from '../read-log.ts';
import { guessRole } from './guess-role.ts';
import type { SignalPlan, SignalSource } from './signal-source.ts';

export type PlannedSignals = { readonly ok: true; readonly plans: readonly SignalPlan[] } | LogRefusal;

/**
 * Decides what the named signals of a log measure and in which unit: a person's word first, then the format's own, then
 * a guess from the name. The unit of a speed is never guessed.
 *
 * @param signals - the signals of the log
 * @param options - name of the file and a person's word
 * @param issues - where doubts are told
 * @returns one plan a signal, or why the log can't be used
 */
export function planSignals(
  signals: readonly SignalSource[],
  options: ReadOptions,
  issues: IssueList,
): PlannedSignals {
  const labels = signals.map(({ name }) => name);
  const listed = listedChoices(options.columns ?? {}).filter(([role]) => role !== 'time');
  const missing = listed.find(([, choice]) => findLabel(labels, choice.name) < 0);
  if (missing !== undefined)
    return refuseLog(
      'log-no-column',
      options.name,
      `has no signal '${missing[1].name}'; its signals are ${quotedList(labels)}.`,
    );
  const chosenRoles = new Set<ColumnRole>(listed.map(([role]) => role));
  const plans: SignalPlan[] = [];
  for (const [index, signal] of signals.entries()) {
    const chosen = listed.find(([, choice]) => findLabel(labels, choice.name) === index);
    const plan =
      chosen === undefined
        ? ownPlan(signal, chosenRoles, issues)
        : chosenPlan(options.name, signal, chosen[0], chosen[1]);
    if ('ok' in plan) return plan;
    plans.push(plan);
  }
  return settledSpeeds(signals, plans, options, issues);
}

function ownPlan(signal: SignalSource, chosenRoles: ReadonlySet<ColumnRole>, issues: IssueList): SignalPlan {
  const { name, unit } = signal;
  const role = signal.role ?? guessRole(signal);
  const chosenBy = signal.role === undefined ? ('guess' as const) : ('format' as const);
  const kept = { ...keptAsRead(signal), chosenBy };
  const dimension = roleDimension[role];
  if (chosenRoles.has(role)) return kept;
  if (dimension === null) return { ...kept, role };
  const scale = unitScale(unit, dimension);
  if (scale !== null) return { ...kept, role, ...scale };
  if (role === 'speed' || role === 'wheel-speed') return { ...kept, role, factor: NaN };
  if (dimension === 'angle' && unit === '') {
    issues.add('unit-assumed', null, () => `Signal '${name}' has no unit; degrees are assumed.`, name);
    return { ...kept, role, unitAsRead: '°', unitOrigin: 'assumed', factor: Math.PI / 180 };
  }
  const what = unit === '' ? 'has no unit' : `has the unknown unit '${unit}'`;
  const levelOnly = role === 'brake-pressure';
  const rest = levelOnly ? 'it only tells when the brake is applied' : 'it is kept but not used';
  issues.add('unit-missing', null, () => `Signal '${name}' ${what}; ${rest}.`, name);
  return levelOnly ? { ...kept, role, unitOrigin: 'none' } : kept;
}

function chosenPlan(
  fileName: string,
  signal: SignalSource,
  role: ColumnRole,
  choice: ColumnChoice,
): SignalPlan | LogRefusal {
  const unit = choice.unit ?? signal.unit;
  const plan = { ...keptAsRead(signal), role, unitAsRead: unit, chosenBy: 'person' as const };
  const dimension = roleDimension[role];
  if (dimension === null) return plan;
  const scale = unitScale(unit, dimension);
  if (scale === null) {
    const why = unit === '' ? 'without a unit' : `in the unknown unit '${unit}'`;
    return refuseLog(
      'log-unknown-unit',
      fileName,
      `would have its ${role} signal '${signal.name}' ${why}; name a unit that fits.`,
    );
  }
  const origin =
    choice.assumed === true ? 'assumed' : choice.unit === undefined ? signal.unitOrigin : 'given';
  return { ...plan, unitOrigin: origin, factor: scale.factor * (choice.scale ?? 1), shift: scale.shift };
}

function keptAsRead({ unit, unitOrigin }: SignalSource): SignalPlan {
  const origin = unit === '' ? 'none' : unitOrigin;
  return { role: 'unknown', unitAsRead: unit, unitOrigin: origin, chosenBy: 'guess', factor: 1, shift: 0 };
}

/** Speeds without a unit: a given scale serves them; beside one with a unit they are kept and not used; else refused. */
function settledSpeeds(
  signals: readonly SignalSource[],
  plans: readonly SignalPlan[],
  { name, speedScale }: ReadOptions,
  issues: IssueList,
): PlannedSignals {
  const doubtful = signals.filter((_, index) => isSpeed(plans[index]!) && Number.isNaN(plans[index]!.factor));
  if (doubtful.length === 0) return { ok: true, plans };
  const isUsable = plans.some((plan) => isSpeed(plan) && Number.isFinite(plan.factor));
  if (!isUsable && speedScale === undefined) return speedRefusal(name, doubtful);
  const settled = plans.map((plan, index): SignalPlan => {
    if (!Number.isNaN(plan.factor)) return plan;
    if (speedScale !== undefined) return { ...plan, unitOrigin: 'given', factor: speedScale };
    const label = signals[index]!.name;
    issues.add(
      'unit-missing',
      null,
      () => `Signal '${label}' has no known unit; it is kept but not used.`,
      label,
    );
    return { ...plan, role: 'unknown', factor: 1 };
  });
  return { ok: true, plans: settled };
}

function speedRefusal(name: string, doubtful: readonly SignalSource[]): LogRefusal {
  const { name: label, unit } = doubtful[0]!;
  if (unit !== '')
    return refuseLog(
      'log-unknown-unit',
      name,
      `has its speed '${label}' in the unknown unit '${unit}'; say which unit it is: km/h, mph, m/s, kn or ft/s.`,
    );
  return refuseLog(
    'log-speed-without-unit',
    name,
    `does not say in which unit its speed '${label}' is; say it: km/h, mph, m/s, kn or ft/s.`,
  );
}

function isSpeed({ role }: SignalPlan): boolean {
  return role === 'speed' || role === 'wheel-speed';
}
