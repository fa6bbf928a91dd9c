import { runRoles, type LogSummary, type RunRole } from '@standstill/workshop';
import { useId, useState } from 'react';
import type { RunReport } from '../read/use-reports.ts';
import type { ProofPair } from '../pair/proof-choices.tsx';
import { roleTitles } from './run-roles.ts';
import { SetPanel } from './set-panel.tsx';

export interface OtherRunsProps {
  readonly pair: ProofPair;
  readonly reports: readonly RunReport[];
  readonly spare: readonly LogSummary[];
  readonly fastest: number;
}

const others = runRoles.filter((role) => role !== 'before' && role !== 'after');

const sides: Readonly<Partial<Record<RunRole, string>>> = {
  repeat: 'of a repeat',
  'reference-before': 'of a reference car, before',
  'reference-after': 'of a reference car, after',
  fade: 'in a row',
};

/** Stops of neither set: they tell the change from the day, or show fade. */
export function OtherRuns({ pair, reports, spare, fastest }: OtherRunsProps) {
  const [role, setRole] = useState<RunRole>('repeat');
  const id = useId();
  const isOld = role === 'repeat' || role === 'reference-before' || role === 'fade';
  return (
    <div className="stack">
      <div className="field no-print role-of-new">
        <label htmlFor={id}>The next log is</label>
        <select id={id} value={role} onChange={(event) => setRole(event.target.value as RunRole)}>
          {others.map((other) => (
            <option key={other} value={other}>
              {roleTitles[other]}
            </option>
          ))}
        </select>
      </div>
      <SetPanel
        side={sides[role] ?? ''}
        setUp={isOld ? pair.before : pair.after}
        place={role}
        reports={reports}
        spare={spare}
        fastest={fastest}
      />
    </div>
  );
}
