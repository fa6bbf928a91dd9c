import { runFacts, type JobDocument, type RunDocument } from '@standstill/workshop';
import { useId } from 'react';
import { useJobDocument, useJobSession } from '../../../shared/job/job-context.ts';
import { TextField } from '../../../shared/job/text-field.tsx';
import { QuantityField } from '../../../shared/quantity/quantity-field.tsx';
import { editRun } from './run-edits.ts';
import { RunRoleField } from './run-role-field.tsx';

const hints = {
  date: 'e.g. 2026-05-09',
  tires: 'kind, age, pressure; warm or cold',
  surface: 'e.g. dry asphalt, level',
  driver: 'who braked',
  logger: 'which box, and where it sat',
  notes: 'fuel, load, anything odd',
} as const;

/** Shorter than the facts' own titles, which stand in lists without a run beside them. */
const conditions = {
  startTemperature: 'Rotors at the start',
  tireTemperature: 'Tires',
  surfaceTemperature: 'Road',
  airTemperature: 'Air',
  headWind: 'Head wind (tail wind: minus)',
  grade: 'Grade, uphill plus',
} as const satisfies Partial<Record<keyof typeof runFacts, string>>;

type Condition = keyof typeof conditions;

/** What a log can not know about its day, to be written down beside it. */
export function RunFacts({ run }: { readonly run: RunDocument }) {
  const index = useJobDocument().runs?.findIndex(({ id }) => id === run.id) ?? -1;
  if (index < 0) return null;
  const path = `runs.${index}`;
  return (
    <fieldset className="run-facts">
      <legend className="unseen">What was true of this log</legend>
      <div className="fields">
        <RunRoleField run={run} />
        <TextField path={`${path}.date`} title="Date" hint={hints.date} />
        <TextField path={`${path}.tires`} title="Tires" hint={hints.tires} />
        <TextField path={`${path}.surface`} title="Surface" hint={hints.surface} />
        <TextField path={`${path}.driver`} title="Driver" hint={hints.driver} />
        <DirectionField run={run} />
      </div>
      <details>
        <summary>{conditionsWords(run)}</summary>
        <div className="fields">
          {(Object.keys(conditions) as Condition[]).map((key) => (
            <QuantityField key={key} path={`${path}.${key}`} fact={runFacts[key]} title={titleOf(key)} />
          ))}
          <TextField path={`${path}.logger`} title="Logger" hint={hints.logger} />
          <TextField path={`${path}.notes`} title="Notes" hint={hints.notes} wide />
        </div>
      </details>
    </fieldset>
  );
}

function titleOf(key: Condition): string {
  return key.endsWith('Temperature') && key !== 'startTemperature'
    ? `${conditions[key]} temperature`
    : conditions[key];
}

/** How much of the day is written down, without opening it. */
function conditionsWords(run: RunDocument): string {
  const keys = [...(Object.keys(conditions) as Condition[]), 'logger', 'notes'] as const;
  const stated = keys.filter((key) => run[key] !== undefined).length;
  return `Temperatures, wind, logger: ${stated} of ${keys.length} stated`;
}

function DirectionField({ run }: { readonly run: RunDocument }) {
  const session = useJobSession();
  const id = useId();
  const choose = (text: string) =>
    session.edit((job) =>
      editRun(job as JobDocument, run.id, ({ direction: _before, ...rest }) =>
        text === 'out' || text === 'back' ? { ...rest, direction: text } : rest,
      ),
    );
  return (
    <div className="field">
      <label htmlFor={id}>Way</label>
      <select
        id={id}
        value={run.direction ?? ''}
        aria-describedby={`${id}h`}
        onChange={(event) => choose(event.target.value)}
      >
        <option value="">not stated, or both</option>
        <option value="out">out</option>
        <option value="back">back</option>
      </select>
      <p id={`${id}h`} className="hint">
        of two ways over one stretch, so that wind and grade can be told
      </p>
    </div>
  );
}
