import { runRoles, type JobDocument, type RunDocument, type RunRole } from '@standstill/workshop';
import { useId } from 'react';
import { useSearchParams } from 'wouter';
import { useJobDocument, useJobSession } from '../../../shared/job/job-context.ts';
import { pairOf } from '../pair/proof-choices.tsx';
import { editRun } from './run-edits.ts';
import { placeOf, roleTitles, withRole } from './run-roles.ts';

/** What a log of stops is to the comparison; choosing another moves it there. */
export function RunRoleField({ run }: { readonly run: RunDocument }) {
  const session = useJobSession();
  const document = useJobDocument();
  const [search] = useSearchParams();
  const pair = pairOf(document, search);
  const id = useId();
  const choose = (role: RunRole) =>
    session.edit((job) => editRun(job as JobDocument, run.id, (old) => withRole(old, role, pair)));
  return (
    <div className="field">
      <label htmlFor={id}>This log is</label>
      <select
        id={id}
        value={placeOf(run, pair) ?? 'before'}
        onChange={(event) => choose(event.target.value as RunRole)}
      >
        {runRoles.map((role) => (
          <option key={role} value={role}>
            {roleTitles[role]}
          </option>
        ))}
      </select>
    </div>
  );
}
