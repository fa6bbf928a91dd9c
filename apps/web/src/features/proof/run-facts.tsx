import type { RunDocument } from '@standstill/workshop';
import { TextField } from '../../shared/job/text-field.tsx';
import { useJobDocument } from '../../shared/job/job-context.ts';

const hints = {
  date: 'e.g. 2026-05-09',
  tires: 'kind, age, pressure; warm or cold',
  surface: 'e.g. dry asphalt, level',
  notes: 'who drove, rotor temperature before each stop, wind, fuel',
} as const;

/** What a log can not know about its day, to be written down beside it. */
export function RunFacts({ run }: { readonly run: RunDocument }) {
  const index = useJobDocument().runs?.findIndex(({ id }) => id === run.id) ?? -1;
  if (index < 0) return null;
  const path = `runs.${index}`;
  return (
    <fieldset className="run-facts">
      <legend className="unseen">What was true of this log</legend>
      <div className="fields">
        <TextField path={`${path}.date`} title="Date" hint={hints.date} />
        <TextField path={`${path}.tires`} title="Tires" hint={hints.tires} />
        <TextField path={`${path}.surface`} title="Surface" hint={hints.surface} />
        <TextField
          path={`${path}.notes`}
          title="Driver, rotor temperature, weather"
          hint={hints.notes}
          wide
        />
      </div>
    </fieldset>
  );
}
