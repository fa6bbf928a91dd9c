import type { IssueList } from '../../channels/issue-list.ts';
import { quotedList, refuseLog, type LogRefusal } from '../log-refusal.ts';
import { listedChoices, type ColumnChoice, type ColumnChoices } from './column-choice.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { guessQuantity, isBareBrake, type ColumnRole } from './guess-quantity.ts';
import { headerField, type HeaderField } from './header-field.ts';
import { roleDimension } from './role-dimension.ts';
import { sampleOf, type ColumnSample } from './column-sample.ts';
import { unitScale } from './unit-scale.ts';

/** What the columns of a file are, decided before its rows are read. */
export interface PlannedColumns {
  readonly ok: true;
  readonly columns: readonly ColumnPlan[];
}

export interface PlanInput {
  readonly name: string;
  readonly dialect: CsvDialect;
  readonly labels: readonly string[];
  readonly choices: ColumnChoices;
  readonly issues: IssueList;
}

/**
 * Decides for every column what it measures and in which unit: a person's word first, else a guess from the heading,
 * else from its values where the heading says just 'brake'. A unit is never guessed where the size of a result would
 * hang on it, but for angles, which logs write in degrees.
 *
 * @param input - the file's dialect, labels and the person's choices
 * @returns the plans, or why the file can't be used
 */
export function planColumns(input: PlanInput): PlannedColumns | LogRefusal {
  const { name, labels, choices } = input;
  const listed = listedChoices(choices);
  for (const [, choice] of listed) {
    if (findLabel(labels, choice.name) < 0)
      return refuseLog(
        'log-no-column',
        name,
        `has no column '${choice.name}'; its columns are ${quotedList(labels)}.`,
      );
  }
  const chosenRoles = new Set(listed.map(([role]) => role));
  const columns: ColumnPlan[] = [];
  for (let index = 0; index < labels.length; index += 1) {
    const chosen = listed.find(([, choice]) => findLabel(labels, choice.name) === index);
    const sample = sampleOf(input.dialect, index);
    const plan =
      chosen === undefined
        ? guessedPlan(input, index, sample, chosenRoles)
        : chosenPlan(input, index, sample, chosen[0], chosen[1]);
    if ('ok' in plan) return plan;
    columns.push(plan);
  }
  return { ok: true, columns };
}

/** Index of the column that a person means: the very heading, else the one that differs only in capitals or blanks. */
export function findLabel(labels: readonly string[], wanted: string): number {
  const exact = labels.indexOf(wanted);
  return exact >= 0 ? exact : labels.findIndex((label) => folded(label) === folded(wanted));
}

function folded(text: string): string {
  return text.toLowerCase().replace(/\s+/g, ' ').trim();
}

function guessedPlan(
  { dialect, labels, issues }: PlanInput,
  index: number,
  sample: ColumnSample,
  chosenRoles: ReadonlySet<ColumnRole>,
): ColumnPlan {
  const label = labels[index]!;
  const rowUnit = unitOfRow(dialect, index);
  const parts = rowUnit === '' ? headerField(label, fitsRole) : { name: label, unit: rowUnit };
  const guess = isBareBrake(parts.name) ? brakeRole(sample) : guessed(parts);
  const isText = sample.isText && guess !== 'brake-switch' && guess !== 'time';
  if (isText) return { ...nothing(index, label), isText };
  if (chosenRoles.has(guess)) return { ...nothing(index, label), unitAsRead: parts.unit };
  return scaled(index, label, guess, parts.unit, issues);
}

/** Degrees with a sign can only be a temperature, whatever the heading says; a bare degree sign is an angle. */
function guessed({ name, unit }: HeaderField): ColumnRole {
  const byName = guessQuantity(name);
  return byName === 'unknown' && /^°\s?[CF]$/.test(unit) ? 'temperature' : byName;
}

function scaled(index: number, label: string, role: ColumnRole, unit: string, issues: IssueList): ColumnPlan {
  const dimension = roleDimension[role];
  const plan = { ...nothing(index, label), role, unitAsRead: unit };
  if (dimension === null || role === 'time') return { ...plan, unitOrigin: unit === '' ? 'none' : 'header' };
  const scale = unitScale(unit, dimension);
  if (scale !== null) return { ...plan, unitOrigin: 'header', ...scale };
  if (dimension === 'angle' && unit === '') {
    issues.add('unit-assumed', null, () => `Column '${label}' has no unit; degrees are assumed.`, label);
    return { ...plan, unitAsRead: '°', unitOrigin: 'assumed', factor: Math.PI / 180 };
  }
  if (role === 'speed') return { ...plan, unitOrigin: 'none', factor: NaN };
  const what = unit === '' ? 'has no unit' : `has the unknown unit '${unit}'`;
  if (role === 'brake-pressure') {
    issues.add(
      'unit-missing',
      null,
      () => `Column '${label}' ${what}; it only tells when the brake is applied.`,
      label,
    );
    return plan;
  }
  issues.add('unit-missing', null, () => `Column '${label}' ${what}; it is kept but not used.`, label);
  return { ...plan, role: 'unknown' };
}

function chosenPlan(
  { name, dialect, labels }: PlanInput,
  index: number,
  sample: ColumnSample,
  role: ColumnRole,
  choice: ColumnChoice,
): ColumnPlan | LogRefusal {
  const label = labels[index]!;
  const parts = headerField(label, (_, unit) => unitScaleOf(role, unit) !== null);
  const unit = choice.unit ?? (unitOfRow(dialect, index) || parts.unit);
  const plan = { ...nothing(index, label), role, unitAsRead: unit, chosenBy: 'person' as const };
  const size = choice.scale ?? 1;
  if (sample.isText && role !== 'time' && role !== 'brake-switch')
    return refuseLog(
      'log-no-column',
      name,
      `holds words, not numbers, in the column '${label}' that is to be the ${role}.`,
    );
  const dimension = roleDimension[role];
  if (dimension === null || (role === 'time' && unit === '')) return { ...plan, unitOrigin: 'none' };
  const scale = unitScale(unit, dimension);
  if (scale === null) {
    const why = unit === '' ? 'without a unit' : `in the unknown unit '${unit}'`;
    return refuseLog(
      'log-unknown-unit',
      name,
      `would have its ${role} column '${label}' ${why}; name a unit that fits.`,
    );
  }
  const origin = choice.assumed === true ? 'assumed' : choice.unit === undefined ? 'header' : 'given';
  return { ...plan, unitOrigin: origin, factor: scale.factor * size, shift: scale.shift };
}

function nothing(index: number, label: string): ColumnPlan {
  return {
    index,
    label,
    role: 'unknown',
    unitAsRead: '',
    unitOrigin: 'none',
    chosenBy: 'guess',
    factor: 1,
    shift: 0,
    isText: false,
  };
}

function fitsRole(name: string, unit: string): boolean {
  return unitScaleOf(isBareBrake(name) ? 'brake-pressure' : guessQuantity(name), unit) !== null;
}

function unitScaleOf(role: ColumnRole, unit: string): ReturnType<typeof unitScale> {
  const dimension = roleDimension[role];
  return dimension === null ? null : unitScale(unit, dimension);
}

function unitOfRow(dialect: CsvDialect, index: number): string {
  return (dialect.units[index] ?? '')
    .trim()
    .replace(/^[[({<](.*)[\])}>]$/s, '$1')
    .trim();
}

/** A brake column that only ever holds two values, or words, is a switch; else it is a level. */
function brakeRole(sample: ColumnSample): ColumnRole {
  const values = new Set(sample.numbers);
  return sample.isText || values.size <= 2 ? 'brake-switch' : 'brake-pressure';
}
