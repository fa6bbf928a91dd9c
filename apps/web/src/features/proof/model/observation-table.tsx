import type { Reconciliation } from '@standstill/workshop';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { printByUnit } from './print-by-unit.ts';

/** Everything that was measured and that the model answers, side by side. */
export function ObservationTable({ observations }: Pick<Reconciliation, 'observations'>) {
  const { preferences } = useUnits();
  return (
    <details>
      <summary>Expected against measured, figure by figure</summary>
      <div className="table-wrap" tabIndex={0} role="group" aria-label="Expected against measured">
        <table>
          <caption>Means with their 95 % intervals</caption>
          <thead>
            <tr>
              {['Figure', 'Measured', 'By the job', 'After learning', 'The job agrees'].map(
                (title, index) => (
                  <th key={title} scope="col" className={index > 0 ? 'figure' : undefined}>
                    {title}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {observations.map(({ set, quantity, title, unit, measured, byJob, learned, agrees }) => (
              <tr key={`${set} ${quantity}`}>
                <th scope="row">
                  {title}, {set}
                </th>
                <td className="figure">{printByUnit(measured, unit, preferences)}</td>
                <td className="figure">{printByUnit(byJob, unit, preferences)}</td>
                <td className="figure">{printByUnit(learned, unit, preferences)}</td>
                <td className="figure">{agrees ? 'yes' : 'no'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
